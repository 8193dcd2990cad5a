-- What testers are asked to pull.
CREATE TABLE "assignment" (
    "id" UUID NOT NULL,
    "edition_id" UUID NOT NULL,
    "spool_id" UUID NOT NULL,
    "method_id" UUID NOT NULL,
    "tester_id" UUID NOT NULL,
    "specimens" INTEGER NOT NULL,
    "due_on" DATE,
    "given_at" TIMESTAMPTZ(3) NOT NULL,
    "taken_back_at" TIMESTAMPTZ(3),

    CONSTRAINT "assignment_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "assignment_asks_for_something" CHECK ("specimens" BETWEEN 1 AND 500)
);
CREATE INDEX "assignment_edition_id_idx" ON "assignment"("edition_id");
CREATE INDEX "assignment_spool_id_idx" ON "assignment"("spool_id");
CREATE INDEX "assignment_method_id_idx" ON "assignment"("method_id");
CREATE INDEX "assignment_tester_id_idx" ON "assignment"("tester_id");
-- The same work is asked of the same person once.
CREATE UNIQUE INDEX "assignment_stands_once" ON "assignment"("edition_id", "spool_id", "method_id", "tester_id") WHERE "taken_back_at" IS NULL;

ALTER TABLE "assignment" ADD CONSTRAINT "assignment_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "assignment" ADD CONSTRAINT "assignment_spool_id_fkey" FOREIGN KEY ("spool_id") REFERENCES "spool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "assignment" ADD CONSTRAINT "assignment_method_id_fkey" FOREIGN KEY ("method_id") REFERENCES "method"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "assignment" ADD CONSTRAINT "assignment_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- It may be taken back, and nothing else of it changes.
CREATE FUNCTION "assignment_is_only_taken_back"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' OR OLD."taken_back_at" IS NOT NULL OR to_jsonb(NEW) - 'taken_back_at' IS DISTINCT FROM to_jsonb(OLD) - 'taken_back_at' THEN
    RAISE EXCEPTION 'assignment_is_only_taken_back: an assignment is taken back, and given anew' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "assignment_is_only_taken_back" BEFORE UPDATE OR DELETE ON "assignment" FOR EACH ROW EXECUTE FUNCTION "assignment_is_only_taken_back"();
CREATE TRIGGER "assignment_is_not_emptied" BEFORE TRUNCATE ON "assignment" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();
