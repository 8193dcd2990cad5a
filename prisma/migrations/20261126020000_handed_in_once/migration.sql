-- AlterTable
ALTER TABLE "control_pull" ADD COLUMN     "content_digest" TEXT;

-- AlterTable
ALTER TABLE "submission" ADD COLUMN     "content_digest" TEXT;

-- AlterTable
ALTER TABLE "submission_revision" ADD COLUMN     "fewer_because" TEXT;

-- CreateIndex
CREATE UNIQUE INDEX "control_pull_content_digest_key" ON "control_pull"("content_digest");



-- The same is handed in once; what was taken back may come again.
CREATE UNIQUE INDEX "submission_is_handed_in_once" ON "submission" ("content_digest") WHERE "state" <> 'takenBack';
ALTER TABLE "submission_revision" ADD CONSTRAINT "fewer_because_has_words" CHECK (length(trim("fewer_because")) > 0);

ALTER TABLE "submission" DROP CONSTRAINT "submission_state_is_known";
ALTER TABLE "submission" ADD CONSTRAINT "submission_state_is_known"
  CHECK ("state" IN ('draft','submitted','accepted','returned','refused','takenBack','withdrawn'));

CREATE OR REPLACE FUNCTION "submission_moves_lawfully"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    IF OLD."state" <> 'draft' THEN
      RAISE EXCEPTION 'only_a_draft_is_deleted: a submission that was handed in stays on record' USING ERRCODE = 'FP001';
    END IF;
    RETURN OLD;
  END IF;
  IF OLD."tester_id" <> NEW."tester_id" OR OLD."reference" <> NEW."reference" THEN
    RAISE EXCEPTION 'submission_keeps_its_tester: tester and reference never change' USING ERRCODE = 'FP001';
  END IF;
  IF OLD."state" <> NEW."state" AND (OLD."state", NEW."state") NOT IN (('draft','submitted'), ('submitted','accepted'), ('submitted','returned'),
      ('submitted','refused'), ('submitted','takenBack'), ('returned','submitted'), ('returned','takenBack'), ('accepted','withdrawn')) THEN
    RAISE EXCEPTION 'submission_moves_lawfully: % to % is not a step', OLD."state", NEW."state" USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;

-- Once a reviewer looks at it, a submission is decided by a review.
CREATE FUNCTION "taken_back_before_review"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" = 'submitted' AND NEW."state" = 'takenBack' AND (
      EXISTS (SELECT 1 FROM "review_claim" c WHERE c."submission_id" = NEW."id") OR
      EXISTS (SELECT 1 FROM "judgement" j JOIN "submission_revision" r ON r."id" = j."revision_id"
              WHERE r."submission_id" = NEW."id" AND r."number" = NEW."revision")) THEN
    RAISE EXCEPTION 'taken_back_before_review: a reviewer has begun to look at it' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "taken_back_before_review" BEFORE UPDATE ON "submission" FOR EACH ROW EXECUTE FUNCTION "taken_back_before_review"();
