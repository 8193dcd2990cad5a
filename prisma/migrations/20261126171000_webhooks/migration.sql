-- Addresses that are told of changes, and every attempt to tell them.
CREATE TABLE "webhook" (
    "id" UUID NOT NULL,
    "address" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "kinds" TEXT[],
    "secret" TEXT NOT NULL,
    "created_by_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "told_up_to" BIGINT NOT NULL,
    "failures" INTEGER NOT NULL DEFAULT 0,
    "failing_since" TIMESTAMPTZ(3),
    "paused_at" TIMESTAMPTZ(3),
    "paused_because" TEXT,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "webhook_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "webhook_says_why_it_is_paused" CHECK (("paused_at" IS NULL) = ("paused_because" IS NULL)),
    CONSTRAINT "webhook_fails_since_its_first_failure" CHECK (("failures" = 0) = ("failing_since" IS NULL))
);
CREATE TABLE "webhook_attempt" (
    "id" UUID NOT NULL,
    "webhook_id" UUID NOT NULL,
    "change_number" BIGINT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "is_delivered" BOOLEAN NOT NULL,
    "status" INTEGER,
    "words" TEXT NOT NULL,
    "took_ms" INTEGER NOT NULL,

    CONSTRAINT "webhook_attempt_pkey" PRIMARY KEY ("id")
);
CREATE INDEX "webhook_created_by_id_idx" ON "webhook"("created_by_id");
CREATE INDEX "webhook_attempt_webhook_id_id_idx" ON "webhook_attempt"("webhook_id", "id");
CREATE INDEX "webhook_attempt_change_number_idx" ON "webhook_attempt"("change_number");
ALTER TABLE "webhook" ADD CONSTRAINT "webhook_created_by_id_fkey" FOREIGN KEY ("created_by_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "webhook_attempt" ADD CONSTRAINT "webhook_attempt_webhook_id_fkey" FOREIGN KEY ("webhook_id") REFERENCES "webhook"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "webhook_attempt" ADD CONSTRAINT "webhook_attempt_change_number_fkey" FOREIGN KEY ("change_number") REFERENCES "change"("number") ON DELETE RESTRICT ON UPDATE CASCADE;
CREATE TRIGGER "webhook_attempt_is_append_only" BEFORE UPDATE OR DELETE ON "webhook_attempt" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "webhook_attempt_is_not_emptied" BEFORE TRUNCATE ON "webhook_attempt" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();
