"""Every table, imported once, so that the metadata is whole wherever it is asked for."""

from sqlalchemy.orm import configure_mappers
from sqlmodel import SQLModel

from storage import (
    chats,
    due,
    fact_tables,
    health,
    inbox,
    invites,
    notes,
    outbox,
    pace,
    persons,
    questions,
    rules,
    tombstones,
)

metadata = SQLModel.metadata

SUBJECTS = (chats, due, fact_tables, health, inbox, invites, notes, outbox, pace, persons, questions, rules, tombstones)

# The constructor of a model would do it, but rows that are read are made without one: `storage.database.loose`.
configure_mappers()
