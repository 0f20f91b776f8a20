"""Wordings of three languages for reports that lean on the day's plan; `against_plan` fills and judges them.

Slots: {mv} a movement, {the} with its article, {dat} in the dative, {n} reps, {load} {old} kilograms, {k} a number of
sets, {kw} the same as a word, {nth} an ordinal, {i} {j} numbers of sets, {s} seconds, {side} {other} sides.
"""

from tests.corpus.plan_words.english import ENGLISH
from tests.corpus.plan_words.german import GERMAN
from tests.corpus.plan_words.spanish import SPANISH
from tests.corpus.plan_words.spoken import PlanWords

__all__ = ["BY_CODE", "PlanWords"]

BY_CODE = {"en": ENGLISH, "de": GERMAN, "es": SPANISH}
