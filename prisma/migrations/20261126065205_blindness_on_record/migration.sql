-- AlterTable
ALTER TABLE "submission_revision" ADD COLUMN     "is_blind" BOOLEAN NOT NULL DEFAULT true;

-- CreateTable
CREATE TABLE "key_reading" (
    "account_id" UUID NOT NULL,
    "spool_id" UUID NOT NULL,
    "how" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "key_reading_pkey" PRIMARY KEY ("account_id","spool_id","how")
);

-- CreateTable
CREATE TABLE "spool_previews" (
    "tester_id" UUID NOT NULL,
    "spool_id" UUID NOT NULL,
    "count" INTEGER NOT NULL,
    "last_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "spool_previews_pkey" PRIMARY KEY ("tester_id","spool_id")
);

-- CreateIndex
CREATE INDEX "key_reading_spool_id_idx" ON "key_reading"("spool_id");

-- CreateIndex
CREATE INDEX "spool_previews_spool_id_idx" ON "spool_previews"("spool_id");

-- AddForeignKey
ALTER TABLE "key_reading" ADD CONSTRAINT "key_reading_spool_id_fkey" FOREIGN KEY ("spool_id") REFERENCES "spool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "spool_previews" ADD CONSTRAINT "spool_previews_spool_id_fkey" FOREIGN KEY ("spool_id") REFERENCES "spool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


ALTER TABLE "key_reading" ADD CONSTRAINT "key_reading_is_known" CHECK ("how" IN ('key', 'label', 'results', 'retest'));
ALTER TABLE "spool_previews" ADD CONSTRAINT "previews_are_counted" CHECK ("count" > 0);
CREATE TRIGGER "key_reading_is_append_only" BEFORE UPDATE OR DELETE ON "key_reading" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "key_reading_is_not_emptied" BEFORE TRUNCATE ON "key_reading" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- What is known of before this was kept: who put a spool on the shelf or changed what it is, and whose tester had seen the label.
INSERT INTO "key_reading" ("account_id", "spool_id", "how", "at")
SELECT a."actor_id", p."id", 'key', min(a."at") FROM "audit_event" a JOIN "spool" p ON p."blind_code" = a."object_id"
WHERE a."object_type" = 'spool' AND a."actor_id" IS NOT NULL GROUP BY 1, 2;
ALTER TABLE "submission_revision" DISABLE TRIGGER "submission_revision_is_append_only";
UPDATE "submission_revision" SET "is_blind" = false WHERE "has_seen_label";
ALTER TABLE "submission_revision" ENABLE TRIGGER "submission_revision_is_append_only";

-- A revision is blind only where its tester has neither seen the label nor read what tells of the spool.
CREATE FUNCTION "not_blind_is_marked"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW."is_blind" AND (NEW."has_seen_label" OR EXISTS (
    SELECT 1 FROM "submission" s JOIN "key_reading" k ON k."spool_id" = s."spool_id" AND k."account_id" = s."tester_id"
    WHERE s."id" = NEW."submission_id")) THEN
    RAISE EXCEPTION 'not_blind_is_marked: its tester has read what tells of the spool; hand it in again, it is marked then' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "not_blind_is_marked" BEFORE INSERT ON "submission_revision" FOR EACH ROW EXECUTE FUNCTION "not_blind_is_marked"();

-- Who tested it first may hand it in again, for a refusal would tell that it is a second time; it is never accepted.
CREATE OR REPLACE FUNCTION "retest_is_by_another"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW."state" = 'accepted' AND EXISTS (
    SELECT 1 FROM "retest" t JOIN "submission" s ON s."id" = t."submission_id" WHERE t."spool_id" = NEW."spool_id" AND s."tester_id" = NEW."tester_id") THEN
    RAISE EXCEPTION 'retest_is_by_another: another tester pulls this spool; refuse this one' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
