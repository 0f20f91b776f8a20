"""Athletes' messages with the readings they deserve: notation, hand-written themes, generator, scorer."""
