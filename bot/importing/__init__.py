"""Old notes become facts: a text file of dated notes, or a table with named columns, read by the bot's own reader."""
