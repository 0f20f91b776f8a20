"""Every table, imported once, so that the metadata is whole wherever it is asked for."""

from sqlmodel import SQLModel

from storage import chats, due, fact_tables, health, inbox, invites, notes, outbox, persons, questions, rules

metadata = SQLModel.metadata

SUBJECTS = (chats, due, fact_tables, health, inbox, invites, notes, outbox, persons, questions, rules)
