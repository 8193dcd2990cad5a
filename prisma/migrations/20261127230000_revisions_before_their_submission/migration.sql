-- Of a long file what was examined is stored while the rest is examined; the submissions themselves follow at the end of the same
-- transaction, so that nothing that others wait for is locked meanwhile. What a revision says of its submission is looked at then.
ALTER TABLE "submission_revision" ALTER CONSTRAINT "submission_revision_submission_id_fkey" DEFERRABLE INITIALLY DEFERRED;
DROP TRIGGER "not_blind_is_marked" ON "submission_revision";
CREATE CONSTRAINT TRIGGER "not_blind_is_marked" AFTER INSERT ON "submission_revision"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION "not_blind_is_marked"();
