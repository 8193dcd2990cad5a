-- A tester's list is read newest first, a page at a time: one index finds it and has its order.
DROP INDEX "submission_tester_id_idx";
CREATE INDEX "submission_tester_id_id_idx" ON "submission"("tester_id", "id");
