-- One unique index of readings is enough: the one that takes a missing station for a station (NULLS NOT DISTINCT).
DROP INDEX "reading_specimen_id_role_station_key";

-- Every foreign key leads an index: rows are looked for by what they belong to.
CREATE INDEX "control_pull_control_line_id_idx" ON "control_pull"("control_line_id");
CREATE INDEX "control_pull_method_id_idx" ON "control_pull"("method_id");
CREATE INDEX "control_pull_tester_id_idx" ON "control_pull"("tester_id");
CREATE INDEX "declared_interest_maker_id_idx" ON "declared_interest"("maker_id");
CREATE INDEX "edition_previous_id_idx" ON "edition"("previous_id");
CREATE INDEX "edition_scheme_id_idx" ON "edition"("scheme_id");
CREATE INDEX "edition_method_method_version_id_idx" ON "edition_method"("method_version_id");
CREATE INDEX "entry_variant_id_idx" ON "entry"("variant_id");
CREATE INDEX "judgement_reviewer_id_idx" ON "judgement"("reviewer_id");
CREATE INDEX "line_maker_id_idx" ON "line"("maker_id");
CREATE INDEX "proposal_by_id_idx" ON "proposal"("by_id");
CREATE INDEX "retest_draw_id_idx" ON "retest"("draw_id");
CREATE INDEX "review_reviewer_id_idx" ON "review"("reviewer_id");
CREATE INDEX "review_claim_reviewer_id_idx" ON "review_claim"("reviewer_id");
CREATE INDEX "round_robin_method_id_idx" ON "round_robin"("method_id");
CREATE INDEX "round_robin_cell_instrument_id_idx" ON "round_robin_cell"("instrument_id");
CREATE INDEX "round_robin_tester_tester_id_idx" ON "round_robin_tester"("tester_id");
CREATE INDEX "set_aside_review_id_idx" ON "set_aside"("review_id");
CREATE INDEX "spool_variant_id_idx" ON "spool"("variant_id");
CREATE INDEX "spool_reidentification_spool_id_idx" ON "spool_reidentification"("spool_id");
CREATE INDEX "submission_method_version_id_idx" ON "submission"("method_version_id");
CREATE INDEX "submission_instrument_instrument_id_idx" ON "submission_instrument"("instrument_id");
