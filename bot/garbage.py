"""How often Python looks for objects that hold each other."""

from __future__ import annotations

import gc

# By default it looks after each 700 new objects, and walks through all there are after some of these: with a morning's
# records at hand that is a fifth of the sweep, for next to nothing found. Records, plans and rows hold nobody back.
NEW, YOUNG, OLD = 20_000, 20, 20
HARDLY_ANY = 1_000_000  # new objects; all words of three languages are about as many


def look_seldom() -> None:
    """For a process that lives long, once it has loaded what it needs."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(NEW, YOUNG, OLD)


def look_hardly_ever() -> None:
    """For a process that does nothing but read: a reading leaves no such objects behind, and its words stay."""
    gc.set_threshold(HARDLY_ANY, YOUNG, OLD)
