"""Messages in German, a file a theme; each file has one `THEME`."""
