"""The first tables."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "coach",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("timezone", sa.String(), nullable=False),
        sa.Column("language", sa.String(), nullable=False),
        sa.Column("unit", sa.String(), nullable=False),
        sa.Column("summary_day", sa.Integer(), nullable=True),
        sa.Column("summary_at", sa.Time(), nullable=True),
        sa.Column("stamp", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coach")),
    )
    op.create_table(
        "heartbeat",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_heartbeat")),
        sa.UniqueConstraint("name", name=op.f("uq_heartbeat_name")),
    )
    op.create_table(
        "invite_try",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("channel", sa.String(), nullable=False),
        sa.Column("address", sa.String(), nullable=False),
        sa.Column("tries", sa.Integer(), nullable=False),
        sa.Column("since", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_invite_try")),
        sa.UniqueConstraint("channel", "address", name=op.f("uq_invite_try_channel_address")),
    )
    op.create_table(
        "athlete",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("handle", sa.String(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("timezone", sa.String(), nullable=False),
        sa.Column("language", sa.String(), nullable=False),
        sa.Column("unit", sa.String(), nullable=False),
        sa.Column("bodyweight_kg", sa.Float(), nullable=False),
        sa.Column("plate_step", sa.Float(), nullable=False),
        sa.Column("plate_unit", sa.String(), nullable=False),
        sa.Column("equipment", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("schedule", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("plan_at", sa.Time(), nullable=False),
        sa.Column("ladders", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("screened", sa.Boolean(), nullable=False),
        sa.Column("started_on", sa.Date(), nullable=False),
        sa.Column("silenced", sa.Boolean(), nullable=False),
        sa.Column("rules", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("stamp", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_athlete_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_athlete")),
        sa.UniqueConstraint("coach_id", "handle", name=op.f("uq_athlete_coach_id_handle")),
    )
    op.create_table(
        "nickname",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("phrase", sa.String(), nullable=False),
        sa.Column("movement", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_nickname_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_nickname")),
        sa.UniqueConstraint("coach_id", "phrase", name=op.f("uq_nickname_coach_id_phrase")),
    )
    op.create_table(
        "rule_override",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("rule", sa.String(), nullable=False),
        sa.Column("value", sa.JSON(none_as_null=True), nullable=False),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_rule_override_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_rule_override")),
        sa.UniqueConstraint("coach_id", "rule", name=op.f("uq_rule_override_coach_id_rule")),
    )
    op.create_table(
        "absence_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("said_on", sa.Date(), nullable=False),
        sa.Column("since", sa.Date(), nullable=False),
        sa.Column("until", sa.Date(), nullable=True),
        sa.Column("fever", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_absence_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_absence_fact")),
    )
    with op.batch_alter_table("absence_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_absence_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "bodyweight_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("kg", sa.Float(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_bodyweight_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bodyweight_fact")),
    )
    with op.batch_alter_table("bodyweight_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_bodyweight_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "chat",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("channel", sa.String(), nullable=False),
        sa.Column("address", sa.String(), nullable=False),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("blocked", sa.Boolean(), nullable=False),
        sa.Column("bound_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_chat_athlete_id_athlete")),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_chat_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_chat")),
        sa.UniqueConstraint("channel", "address", name=op.f("uq_chat_channel_address")),
    )
    with op.batch_alter_table("chat", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_chat_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_chat_coach_id"), ["coach_id"], unique=False)

    op.create_table(
        "clip_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("movement", sa.String(), nullable=True),
        sa.Column("side", sa.String(), nullable=True),
        sa.Column("seen_by_coach", sa.Boolean(), nullable=False),
        sa.Column("media", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_clip_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_clip_fact")),
    )
    with op.batch_alter_table("clip_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_clip_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "coach_note",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("written_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_coach_note_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coach_note")),
    )
    with op.batch_alter_table("coach_note", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_coach_note_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "due",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("for_date", sa.Date(), nullable=False),
        sa.Column("due_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("done_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("given_up_because", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_due_athlete_id_athlete")),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_due_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_due")),
        sa.UniqueConstraint("athlete_id", "kind", "for_date", name=op.f("uq_due_athlete_id_kind_for_date")),
        sa.UniqueConstraint("coach_id", "kind", "for_date", name=op.f("uq_due_coach_id_kind_for_date")),
    )
    with op.batch_alter_table("due", schema=None) as batch_op:
        batch_op.create_index(
            "ix_due_open",
            ["due_at"],
            unique=False,
            sqlite_where=sa.text("done_at IS NULL"),
            postgresql_where=sa.text("done_at IS NULL"),
        )

    op.create_table(
        "equipment_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("since", sa.Date(), nullable=False),
        sa.Column("has", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("until", sa.Date(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_equipment_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_equipment_fact")),
    )
    with op.batch_alter_table("equipment_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_equipment_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "incoming",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("channel", sa.String(), nullable=False),
        sa.Column("update_key", sa.String(), nullable=False),
        sa.Column("address", sa.String(), nullable=False),
        sa.Column("sender", sa.String(), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("data", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("sent_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("received_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("handled_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("not_before", sa.DateTime(timezone=True), nullable=True),
        sa.Column("set_aside_because", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_incoming_athlete_id_athlete")),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_incoming_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_incoming")),
        sa.UniqueConstraint("channel", "update_key", name=op.f("uq_incoming_channel_update_key")),
    )
    with op.batch_alter_table("incoming", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_incoming_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_incoming_coach_id"), ["coach_id"], unique=False)
        batch_op.create_index(
            "ix_incoming_open",
            ["id"],
            unique=False,
            sqlite_where=sa.text("handled_at IS NULL"),
            postgresql_where=sa.text("handled_at IS NULL"),
        )
        batch_op.create_index(
            "ix_incoming_open_sender",
            ["sender", "id"],
            unique=False,
            sqlite_where=sa.text("handled_at IS NULL"),
            postgresql_where=sa.text("handled_at IS NULL"),
        )

    op.create_table(
        "invite",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("code_hash", sa.String(), nullable=False),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("made_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("expires_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("used_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("used_by", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_invite_athlete_id_athlete")),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_invite_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_invite")),
        sa.UniqueConstraint("code_hash", name=op.f("uq_invite_code_hash")),
    )
    with op.batch_alter_table("invite", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_invite_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_invite_coach_id"), ["coach_id"], unique=False)

    op.create_table(
        "move_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("said_on", sa.Date(), nullable=False),
        sa.Column("moved_from", sa.Date(), nullable=False),
        sa.Column("moved_to", sa.Date(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_move_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_move_fact")),
    )
    with op.batch_alter_table("move_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_move_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "order_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("ladder", sa.String(), nullable=True),
        sa.Column("rung", sa.String(), nullable=True),
        sa.Column("movement", sa.String(), nullable=True),
        sa.Column("until", sa.Date(), nullable=True),
        sa.Column("for_date", sa.Date(), nullable=True),
        sa.Column("sets", sa.Integer(), nullable=True),
        sa.Column("reps", sa.Integer(), nullable=True),
        sa.Column("load_kg", sa.Float(), nullable=True),
        sa.Column("rule", sa.String(), nullable=True),
        sa.Column("value", sa.JSON(none_as_null=True), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_order_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_order_fact")),
    )
    with op.batch_alter_table("order_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_order_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "outgoing",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("channel", sa.String(), nullable=False),
        sa.Column("address", sa.String(), nullable=False),
        sa.Column("to", sa.String(), nullable=False),
        sa.Column("about", sa.String(), nullable=True),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("buttons", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("picture", sa.LargeBinary(), nullable=True),
        sa.Column("picture_alt", sa.String(), nullable=True),
        sa.Column("media", sa.String(), nullable=True),
        sa.Column("plan", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("importance", sa.Integer(), nullable=False),
        sa.Column("cause", sa.String(), nullable=False),
        sa.Column("part", sa.Integer(), nullable=False),
        sa.Column("due_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("stale_after", sa.DateTime(timezone=True), nullable=True),
        sa.Column("claimed_until", sa.DateTime(timezone=True), nullable=True),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("not_before", sa.DateTime(timezone=True), nullable=True),
        sa.Column("sent_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("service_id", sa.String(), nullable=True),
        sa.Column("given_up_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("given_up_because", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_outgoing_athlete_id_athlete")),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_outgoing_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_outgoing")),
        sa.UniqueConstraint("cause", "part", name=op.f("uq_outgoing_cause_part")),
    )
    with op.batch_alter_table("outgoing", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_outgoing_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_outgoing_coach_id"), ["coach_id"], unique=False)
        batch_op.create_index(
            "ix_outgoing_open",
            ["channel", "due_at"],
            unique=False,
            sqlite_where=sa.text("sent_at IS NULL AND given_up_because IS NULL"),
            postgresql_where=sa.text("sent_at IS NULL AND given_up_because IS NULL"),
        )
        batch_op.create_index(
            "ix_outgoing_open_address",
            ["channel", "address"],
            unique=False,
            sqlite_where=sa.text("sent_at IS NULL AND given_up_because IS NULL"),
            postgresql_where=sa.text("sent_at IS NULL AND given_up_because IS NULL"),
        )

    op.create_table(
        "pain_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("site", sa.String(), nullable=True),
        sa.Column("side", sa.String(), nullable=True),
        sa.Column("score", sa.Float(), nullable=True),
        sa.Column("when", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_pain_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_pain_fact")),
    )
    with op.batch_alter_table("pain_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_pain_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "passed_on",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("direction", sa.String(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("passed_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("answered_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_passed_on_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_passed_on")),
    )
    with op.batch_alter_table("passed_on", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_passed_on_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "plan_sent",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("block", sa.Integer(), nullable=False),
        sa.Column("week", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("sets", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("holds", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("decisions", sa.JSON(none_as_null=True), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_plan_sent_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_plan_sent")),
    )
    with op.batch_alter_table("plan_sent", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_plan_sent_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "question",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("asked_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("about", sa.String(), nullable=True),
        sa.Column("span", sa.String(), nullable=True),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("data", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("answered_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("expired_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_question_athlete_id_athlete")),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_question_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_question")),
    )
    with op.batch_alter_table("question", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_question_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_question_coach_id"), ["coach_id"], unique=False)
        batch_op.create_index(
            "uq_question_open_ask_athlete",
            ["athlete_id"],
            unique=True,
            sqlite_where=sa.text("kind = 'ask' AND answered_at IS NULL AND expired_at IS NULL"),
            postgresql_where=sa.text("kind = 'ask' AND answered_at IS NULL AND expired_at IS NULL"),
        )
        batch_op.create_index(
            "uq_question_open_ask_coach",
            ["coach_id"],
            unique=True,
            sqlite_where=sa.text("kind = 'ask' AND answered_at IS NULL AND expired_at IS NULL"),
            postgresql_where=sa.text("kind = 'ask' AND answered_at IS NULL AND expired_at IS NULL"),
        )

    op.create_table(
        "report",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("session_rpe", sa.Float(), nullable=True),
        sa.Column("duration_min", sa.Float(), nullable=True),
        sa.Column("sleep_h", sa.Float(), nullable=True),
        sa.Column("is_test", sa.Boolean(), nullable=False),
        sa.Column("replaces", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_report_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_report")),
    )
    with op.batch_alter_table("report", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_report_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "resume_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_resume_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_resume_fact")),
    )
    with op.batch_alter_table("resume_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_resume_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "sign_fact",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("said_by", sa.String(), nullable=False),
        sa.Column("said_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("cause", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=True),
        sa.Column("withdrawn_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("sign", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_sign_fact_athlete_id_athlete")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sign_fact")),
    )
    with op.batch_alter_table("sign_fact", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_sign_fact_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "performed_set",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("athlete_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("report_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("movement", sa.String(), nullable=False),
        sa.Column("reps", sa.Integer(), nullable=True),
        sa.Column("side", sa.String(), nullable=True),
        sa.Column("hold_s", sa.Float(), nullable=True),
        sa.Column("load_kg", sa.Float(), nullable=False),
        sa.Column("assist_kg", sa.Float(), nullable=False),
        sa.Column("rpe", sa.Float(), nullable=True),
        sa.Column("rom", sa.String(), nullable=False),
        sa.Column("eccentric", sa.Boolean(), nullable=False),
        sa.Column("pauses", sa.String(), nullable=False),
        sa.Column("failed", sa.Boolean(), nullable=False),
        sa.Column("linked", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name=op.f("fk_performed_set_athlete_id_athlete")),
        sa.ForeignKeyConstraint(["report_id"], ["report.id"], name=op.f("fk_performed_set_report_id_report")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_performed_set")),
        sa.UniqueConstraint("report_id", "position", name=op.f("uq_performed_set_report_id_position")),
    )
    with op.batch_alter_table("performed_set", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_performed_set_athlete_id"), ["athlete_id"], unique=False)
