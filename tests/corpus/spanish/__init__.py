"""Messages in Spanish, a file a theme; each file has one `THEME`."""
