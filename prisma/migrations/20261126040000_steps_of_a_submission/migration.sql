-- Every step that a submission may take: a tester takes back what nobody looks at yet, a returned one can be closed with a reason.
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
      ('submitted','refused'), ('submitted','takenBack'), ('returned','submitted'), ('returned','takenBack'), ('returned','refused'), ('accepted','withdrawn')) THEN
    RAISE EXCEPTION 'submission_moves_lawfully: % to % is not a step', OLD."state", NEW."state" USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;

CREATE INDEX "proposal_end_by_id_idx" ON "proposal_end"("by_id");
