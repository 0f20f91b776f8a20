"""The tables' history. A new version: `python -m storage.migrations.draft "what changes"`, then read what it wrote."""

# The newest revision; a test compares it with the scripts. Known here so that nobody must read them to know it.
HEAD = "0014"
