-- A returned submission that will not come back is refused with a reason: a second review of the same revision.
DROP INDEX "review_revision_id_key";
CREATE UNIQUE INDEX "review_revision_id_decision_key" ON "review"("revision_id", "decision");

CREATE FUNCTION "review_follows_a_return"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "review" v WHERE v."revision_id" = NEW."revision_id" AND (v."decision" <> 'returned' OR NEW."decision" <> 'refused')) THEN
    RAISE EXCEPTION 'review_follows_a_return: a revision is decided once; after a return it can only be refused' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "review_follows_a_return" BEFORE INSERT ON "review" FOR EACH ROW EXECUTE FUNCTION "review_follows_a_return"();

CREATE FUNCTION "refusal_has_a_review"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW."state" = 'refused' AND OLD."state" <> 'refused' AND NOT EXISTS (
      SELECT 1 FROM "submission_revision" r JOIN "review" v ON v."revision_id" = r."id"
      WHERE r."submission_id" = NEW."id" AND r."number" = NEW."revision" AND v."decision" = 'refused') THEN
    RAISE EXCEPTION 'refusal_has_a_review: a submission is refused only by a review of its current revision' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "refusal_has_a_review" BEFORE UPDATE ON "submission" FOR EACH ROW EXECUTE FUNCTION "refusal_has_a_review"();

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
      ('submitted','refused'), ('returned','submitted'), ('returned','refused'), ('accepted','withdrawn')) THEN
    RAISE EXCEPTION 'submission_moves_lawfully: % to % is not a step', OLD."state", NEW."state" USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
