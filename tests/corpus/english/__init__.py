"""Messages in English, a file a theme; each file has one `THEME`."""
