-- Pictures kept as evidence.
CREATE TABLE "photo" (
    "id" UUID NOT NULL,
    "submission_id" UUID,
    "spool_id" UUID,
    "specimen" INTEGER,
    "shows" TEXT NOT NULL,
    "digest" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "size_bytes" INTEGER NOT NULL,
    "added_by_id" UUID NOT NULL,
    "added_at" TIMESTAMPTZ(3) NOT NULL,
    "removed_at" TIMESTAMPTZ(3),

    CONSTRAINT "photo_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "photo_is_of_one_thing" CHECK (num_nonnulls("submission_id", "spool_id") = 1),
    CONSTRAINT "photo_shows_something" CHECK ("shows" IN ('break', 'label', 'apparatus', 'other') AND "width" > 0 AND "height" > 0 AND "size_bytes" > 0)
);
CREATE INDEX "photo_submission_id_idx" ON "photo"("submission_id");
CREATE INDEX "photo_spool_id_idx" ON "photo"("spool_id");
CREATE INDEX "photo_digest_idx" ON "photo"("digest");
ALTER TABLE "photo" ADD CONSTRAINT "photo_submission_id_fkey" FOREIGN KEY ("submission_id") REFERENCES "submission"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "photo" ADD CONSTRAINT "photo_spool_id_fkey" FOREIGN KEY ("spool_id") REFERENCES "spool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- It may be taken away, and nothing else of it changes; it goes with a draft that is taken away.
CREATE FUNCTION "photo_is_only_taken_away"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    IF OLD."submission_id" IS NOT NULL AND NOT EXISTS (SELECT 1 FROM "submission" WHERE "id" = OLD."submission_id") THEN RETURN OLD; END IF;
  ELSIF OLD."removed_at" IS NULL AND to_jsonb(NEW) - 'removed_at' = to_jsonb(OLD) - 'removed_at' THEN
    RETURN NEW;
  END IF;
  RAISE EXCEPTION 'photo_is_only_taken_away: a photo is taken away, and another added' USING ERRCODE = 'FP001';
END $$;
CREATE TRIGGER "photo_is_only_taken_away" BEFORE UPDATE OR DELETE ON "photo" FOR EACH ROW EXECUTE FUNCTION "photo_is_only_taken_away"();
CREATE TRIGGER "photo_is_not_emptied" BEFORE TRUNCATE ON "photo" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- What was decided was decided on what was there.
CREATE FUNCTION "photo_comes_before_the_decision"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW."submission_id" IS NOT NULL
    AND NOT EXISTS (SELECT 1 FROM "submission" WHERE "id" = NEW."submission_id" AND "state" IN ('draft', 'submitted', 'returned')) THEN
    RAISE EXCEPTION 'photo_comes_before_the_decision: a photo is added until the submission is decided' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "photo_comes_before_the_decision" BEFORE INSERT ON "photo" FOR EACH ROW EXECUTE FUNCTION "photo_comes_before_the_decision"();
