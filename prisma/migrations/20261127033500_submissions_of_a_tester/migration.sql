-- A tester's list is a page of the own submissions, newest first: the index gives it in that order, however many there are of others.
CREATE INDEX "submission_tester_id_id_idx" ON "submission"("tester_id", "id");
DROP INDEX "submission_tester_id_idx";
