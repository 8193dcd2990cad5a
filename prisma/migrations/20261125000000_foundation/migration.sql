-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateTable
CREATE TABLE "account" (
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "display_name" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "roles" TEXT[],
    "is_disabled" BOOLEAN NOT NULL DEFAULT false,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "invitation" (
    "id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "roles" TEXT[],
    "note" TEXT NOT NULL,
    "invited_by" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_at" TIMESTAMPTZ(3),

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "session" (
    "token_hash" TEXT NOT NULL,
    "account_id" UUID NOT NULL,
    "csrf_token" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "session_pkey" PRIMARY KEY ("token_hash")
);

-- CreateTable
CREATE TABLE "api_token" (
    "id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "token_hash" TEXT NOT NULL,
    "scopes" TEXT[],
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "last_used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "api_token_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_failure" (
    "email" TEXT NOT NULL,
    "failures" INTEGER NOT NULL,
    "blocked_until" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_in_failure_pkey" PRIMARY KEY ("email")
);

-- CreateTable
CREATE TABLE "declared_interest" (
    "account_id" UUID NOT NULL,
    "maker_id" UUID NOT NULL,
    "words" TEXT NOT NULL,
    "declared_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "declared_interest_pkey" PRIMARY KEY ("account_id","maker_id")
);

-- CreateTable
CREATE TABLE "maker" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "maker_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "line" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "maker_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "material" TEXT NOT NULL,
    "construction" TEXT NOT NULL,
    "carriers" INTEGER,
    "density_g_per_cm3" DECIMAL(6,4) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "variant" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "line_id" UUID NOT NULL,
    "size" TEXT NOT NULL,
    "colour" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "variant_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "claim" (
    "id" UUID NOT NULL,
    "variant_id" UUID NOT NULL,
    "quantity" TEXT NOT NULL,
    "basis" TEXT NOT NULL,
    "printed_text" TEXT NOT NULL,
    "printed_unit" TEXT NOT NULL,
    "value_si" DECIMAL NOT NULL,
    "seen_on" DATE NOT NULL,
    "source" TEXT NOT NULL,

    CONSTRAINT "claim_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "spool" (
    "id" UUID NOT NULL,
    "blind_code" TEXT NOT NULL,
    "variant_id" UUID NOT NULL,
    "source" TEXT NOT NULL,
    "obtained_on" DATE NOT NULL,
    "place" TEXT NOT NULL,
    "lot" TEXT,
    "length_m" DECIMAL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "spool_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "spool_reidentification" (
    "id" UUID NOT NULL,
    "spool_id" UUID NOT NULL,
    "from_variant_id" UUID NOT NULL,
    "to_variant_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "spool_reidentification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "scheme" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "rules" JSONB NOT NULL,

    CONSTRAINT "scheme_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "edition" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "scheme_id" UUID NOT NULL,
    "state" TEXT NOT NULL,
    "opens_on" DATE NOT NULL,
    "closes_on" DATE NOT NULL,
    "previous_id" UUID,
    "blind_key_digest" TEXT,
    "check_set_version" INTEGER,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "edition_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "edition_method" (
    "edition_id" UUID NOT NULL,
    "method_version_id" UUID NOT NULL,

    CONSTRAINT "edition_method_pkey" PRIMARY KEY ("edition_id","method_version_id")
);

-- CreateTable
CREATE TABLE "entry" (
    "id" UUID NOT NULL,
    "edition_id" UUID NOT NULL,
    "variant_id" UUID NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "exclusion" (
    "entry_id" UUID NOT NULL,
    "reason_code" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "effect" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "exclusion_pkey" PRIMARY KEY ("entry_id")
);

-- CreateTable
CREATE TABLE "instrument" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "capacity_text" TEXT NOT NULL,
    "capacity_unit" TEXT NOT NULL,
    "capacity_si" DECIMAL NOT NULL,
    "resolution_text" TEXT NOT NULL,
    "resolution_unit" TEXT NOT NULL,
    "resolution_si" DECIMAL NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "instrument_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "calibration" (
    "id" UUID NOT NULL,
    "instrument_id" UUID NOT NULL,
    "certificate" TEXT NOT NULL,
    "valid_from" DATE NOT NULL,
    "valid_until" DATE NOT NULL,
    "correction_percent" DECIMAL NOT NULL,
    "expanded_uncertainty_percent" DECIMAL NOT NULL,
    "coverage_factor" DECIMAL NOT NULL,

    CONSTRAINT "calibration_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "method" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "method_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "method_version" (
    "id" UUID NOT NULL,
    "method_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "effective_from" DATE NOT NULL,
    "effective_until" DATE,
    "limits" JSONB NOT NULL,
    "parameters" JSONB NOT NULL,
    "wording" JSONB NOT NULL,
    "is_comparable_with_previous" BOOLEAN NOT NULL,

    CONSTRAINT "method_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "audit_event" (
    "id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "actor_id" UUID,
    "action" TEXT NOT NULL,
    "object_type" TEXT NOT NULL,
    "object_id" TEXT NOT NULL,
    "before" JSONB,
    "after" JSONB,

    CONSTRAINT "audit_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "idempotent_answer" (
    "account_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "request_digest" TEXT NOT NULL,
    "started_at" TIMESTAMPTZ(3) NOT NULL,
    "status" INTEGER,
    "body" TEXT,
    "headers" JSONB,

    CONSTRAINT "idempotent_answer_pkey" PRIMARY KEY ("account_id","key")
);

-- CreateTable
CREATE TABLE "release" (
    "id" UUID NOT NULL,
    "edition_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "requested_by_id" UUID NOT NULL,
    "requested_at" TIMESTAMPTZ(3) NOT NULL,
    "published_at" TIMESTAMPTZ(3),
    "digest" TEXT,
    "previous_digest" TEXT,
    "manifest" TEXT,
    "erratum" JSONB,

    CONSTRAINT "release_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "review" (
    "id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "reviewer_id" UUID NOT NULL,
    "decision" TEXT NOT NULL,
    "reason" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "review_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "set_aside" (
    "specimen_id" UUID NOT NULL,
    "review_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,

    CONSTRAINT "set_aside_pkey" PRIMARY KEY ("specimen_id")
);

-- CreateTable
CREATE TABLE "query" (
    "id" UUID NOT NULL,
    "submission_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "asked_by_id" UUID NOT NULL,
    "asked_at" TIMESTAMPTZ(3) NOT NULL,
    "specimens" INTEGER[],
    "question" TEXT NOT NULL,
    "answer" TEXT,
    "answered_at" TIMESTAMPTZ(3),

    CONSTRAINT "query_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "withdrawal" (
    "submission_id" UUID NOT NULL,
    "by_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "withdrawal_pkey" PRIMARY KEY ("submission_id")
);

-- CreateTable
CREATE TABLE "submission" (
    "id" UUID NOT NULL,
    "reference" TEXT NOT NULL,
    "edition_id" UUID NOT NULL,
    "tester_id" UUID NOT NULL,
    "spool_id" UUID NOT NULL,
    "method_version_id" UUID NOT NULL,
    "bench_day" DATE NOT NULL,
    "state" TEXT NOT NULL,
    "draft" JSONB,
    "revision" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "submission_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "submission_revision" (
    "id" UUID NOT NULL,
    "submission_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "handed_in_at" TIMESTAMPTZ(3) NOT NULL,
    "zone" TEXT NOT NULL,
    "temperature_text" TEXT NOT NULL,
    "temperature_unit" TEXT NOT NULL,
    "temperature_c" DECIMAL NOT NULL,
    "humidity_percent" DECIMAL NOT NULL,
    "has_seen_label" BOOLEAN NOT NULL,
    "note" TEXT,
    "readings_digest" TEXT NOT NULL,
    "check_set_version" INTEGER NOT NULL,
    "figures" JSONB NOT NULL,

    CONSTRAINT "submission_revision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "submission_instrument" (
    "revision_id" UUID NOT NULL,
    "instrument_id" UUID NOT NULL,
    "certificate" TEXT,

    CONSTRAINT "submission_instrument_pkey" PRIMARY KEY ("revision_id","instrument_id")
);

-- CreateTable
CREATE TABLE "specimen" (
    "id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "condition" TEXT NOT NULL,
    "validity" TEXT NOT NULL,
    "invalid_reason" TEXT,

    CONSTRAINT "specimen_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "reading" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "station" INTEGER,
    "entered_text" TEXT NOT NULL,
    "entered_unit" TEXT NOT NULL,
    "value_si" DECIMAL NOT NULL,

    CONSTRAINT "reading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "finding" (
    "id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "severity" TEXT NOT NULL,
    "detail" JSONB NOT NULL,
    "resolution" TEXT,

    CONSTRAINT "finding_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "account_email_key" ON "account"("email");

-- CreateIndex
CREATE UNIQUE INDEX "invitation_token_hash_key" ON "invitation"("token_hash");

-- CreateIndex
CREATE INDEX "session_account_id_idx" ON "session"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "api_token_token_hash_key" ON "api_token"("token_hash");

-- CreateIndex
CREATE INDEX "api_token_account_id_idx" ON "api_token"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "maker_slug_key" ON "maker"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "line_slug_key" ON "line"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "variant_slug_key" ON "variant"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "variant_line_id_size_colour_key" ON "variant"("line_id", "size", "colour");

-- CreateIndex
CREATE UNIQUE INDEX "claim_variant_id_quantity_key" ON "claim"("variant_id", "quantity");

-- CreateIndex
CREATE UNIQUE INDEX "spool_blind_code_key" ON "spool"("blind_code");

-- CreateIndex
CREATE UNIQUE INDEX "scheme_slug_number_key" ON "scheme"("slug", "number");

-- CreateIndex
CREATE UNIQUE INDEX "edition_slug_key" ON "edition"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "entry_edition_id_variant_id_key" ON "entry"("edition_id", "variant_id");

-- CreateIndex
CREATE UNIQUE INDEX "instrument_code_key" ON "instrument"("code");

-- CreateIndex
CREATE UNIQUE INDEX "calibration_instrument_id_certificate_key" ON "calibration"("instrument_id", "certificate");

-- CreateIndex
CREATE UNIQUE INDEX "method_slug_key" ON "method"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "method_version_method_id_number_key" ON "method_version"("method_id", "number");

-- CreateIndex
CREATE INDEX "audit_event_object_type_object_id_idx" ON "audit_event"("object_type", "object_id");

-- CreateIndex
CREATE UNIQUE INDEX "release_edition_id_revision_key" ON "release"("edition_id", "revision");

-- CreateIndex
CREATE UNIQUE INDEX "review_revision_id_key" ON "review"("revision_id");

-- CreateIndex
CREATE INDEX "query_submission_id_idx" ON "query"("submission_id");

-- CreateIndex
CREATE UNIQUE INDEX "submission_reference_key" ON "submission"("reference");

-- CreateIndex
CREATE INDEX "submission_state_idx" ON "submission"("state");

-- CreateIndex
CREATE INDEX "submission_tester_id_idx" ON "submission"("tester_id");

-- CreateIndex
CREATE INDEX "submission_spool_id_idx" ON "submission"("spool_id");

-- CreateIndex
CREATE INDEX "submission_edition_id_state_idx" ON "submission"("edition_id", "state");

-- CreateIndex
CREATE INDEX "submission_revision_readings_digest_idx" ON "submission_revision"("readings_digest");

-- CreateIndex
CREATE UNIQUE INDEX "submission_revision_submission_id_number_key" ON "submission_revision"("submission_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "specimen_revision_id_number_key" ON "specimen"("revision_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "reading_specimen_id_role_station_key" ON "reading"("specimen_id", "role", "station");

-- CreateIndex
CREATE INDEX "finding_revision_id_idx" ON "finding"("revision_id");

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "api_token" ADD CONSTRAINT "api_token_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "declared_interest" ADD CONSTRAINT "declared_interest_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "declared_interest" ADD CONSTRAINT "declared_interest_maker_id_fkey" FOREIGN KEY ("maker_id") REFERENCES "maker"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "line" ADD CONSTRAINT "line_maker_id_fkey" FOREIGN KEY ("maker_id") REFERENCES "maker"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "variant" ADD CONSTRAINT "variant_line_id_fkey" FOREIGN KEY ("line_id") REFERENCES "line"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "claim" ADD CONSTRAINT "claim_variant_id_fkey" FOREIGN KEY ("variant_id") REFERENCES "variant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "spool" ADD CONSTRAINT "spool_variant_id_fkey" FOREIGN KEY ("variant_id") REFERENCES "variant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "spool_reidentification" ADD CONSTRAINT "spool_reidentification_spool_id_fkey" FOREIGN KEY ("spool_id") REFERENCES "spool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edition" ADD CONSTRAINT "edition_scheme_id_fkey" FOREIGN KEY ("scheme_id") REFERENCES "scheme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edition" ADD CONSTRAINT "edition_previous_id_fkey" FOREIGN KEY ("previous_id") REFERENCES "edition"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edition_method" ADD CONSTRAINT "edition_method_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edition_method" ADD CONSTRAINT "edition_method_method_version_id_fkey" FOREIGN KEY ("method_version_id") REFERENCES "method_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "entry" ADD CONSTRAINT "entry_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "entry" ADD CONSTRAINT "entry_variant_id_fkey" FOREIGN KEY ("variant_id") REFERENCES "variant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exclusion" ADD CONSTRAINT "exclusion_entry_id_fkey" FOREIGN KEY ("entry_id") REFERENCES "entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calibration" ADD CONSTRAINT "calibration_instrument_id_fkey" FOREIGN KEY ("instrument_id") REFERENCES "instrument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "method_version" ADD CONSTRAINT "method_version_method_id_fkey" FOREIGN KEY ("method_id") REFERENCES "method"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "release" ADD CONSTRAINT "release_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "review" ADD CONSTRAINT "review_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "submission_revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "review" ADD CONSTRAINT "review_reviewer_id_fkey" FOREIGN KEY ("reviewer_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "set_aside" ADD CONSTRAINT "set_aside_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "set_aside" ADD CONSTRAINT "set_aside_review_id_fkey" FOREIGN KEY ("review_id") REFERENCES "review"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "query" ADD CONSTRAINT "query_submission_id_fkey" FOREIGN KEY ("submission_id") REFERENCES "submission"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "withdrawal" ADD CONSTRAINT "withdrawal_submission_id_fkey" FOREIGN KEY ("submission_id") REFERENCES "submission"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "submission" ADD CONSTRAINT "submission_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "submission" ADD CONSTRAINT "submission_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "submission" ADD CONSTRAINT "submission_spool_id_fkey" FOREIGN KEY ("spool_id") REFERENCES "spool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "submission" ADD CONSTRAINT "submission_method_version_id_fkey" FOREIGN KEY ("method_version_id") REFERENCES "method_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "submission_revision" ADD CONSTRAINT "submission_revision_submission_id_fkey" FOREIGN KEY ("submission_id") REFERENCES "submission"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "submission_instrument" ADD CONSTRAINT "submission_instrument_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "submission_revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "submission_instrument" ADD CONSTRAINT "submission_instrument_instrument_id_fkey" FOREIGN KEY ("instrument_id") REFERENCES "instrument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specimen" ADD CONSTRAINT "specimen_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "submission_revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reading" ADD CONSTRAINT "reading_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "finding" ADD CONSTRAINT "finding_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "submission_revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


