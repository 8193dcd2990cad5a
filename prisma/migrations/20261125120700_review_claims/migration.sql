-- AlterTable
ALTER TABLE "query" ADD COLUMN     "kind" TEXT NOT NULL DEFAULT 'other';

-- CreateTable
CREATE TABLE "review_claim" (
    "submission_id" UUID NOT NULL,
    "reviewer_id" UUID NOT NULL,
    "claimed_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "review_claim_pkey" PRIMARY KEY ("submission_id")
);

-- CreateTable
CREATE TABLE "judgement" (
    "revision_id" UUID NOT NULL,
    "reviewer_id" UUID NOT NULL,
    "verdict" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "judgement_pkey" PRIMARY KEY ("revision_id","reviewer_id")
);

-- AddForeignKey
ALTER TABLE "review_claim" ADD CONSTRAINT "review_claim_submission_id_fkey" FOREIGN KEY ("submission_id") REFERENCES "submission"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "review_claim" ADD CONSTRAINT "review_claim_reviewer_id_fkey" FOREIGN KEY ("reviewer_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "judgement" ADD CONSTRAINT "judgement_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "submission_revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "judgement" ADD CONSTRAINT "judgement_reviewer_id_fkey" FOREIGN KEY ("reviewer_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



ALTER TABLE "query" ADD CONSTRAINT "query_kind_is_known" CHECK ("kind" IN ('reading', 'unit', 'condition', 'identity', 'apparatus', 'other'));
ALTER TABLE "judgement"
  ADD CONSTRAINT "verdict_is_known" CHECK ("verdict" IN ('plausible', 'doubtful')),
  ADD CONSTRAINT "judgement_has_words" CHECK (length(trim("words")) > 0);
ALTER TABLE "review_claim" ADD CONSTRAINT "claim_ends_after_it_begins" CHECK ("expires_at" > "claimed_at");
CREATE TRIGGER "judgement_is_append_only" BEFORE UPDATE OR DELETE ON "judgement" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "judgement_is_not_emptied" BEFORE TRUNCATE ON "judgement" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

CREATE FUNCTION "claimer_is_not_tester"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "submission" s WHERE s."id" = NEW."submission_id" AND s."tester_id" = NEW."reviewer_id") THEN
    RAISE EXCEPTION 'claimer_is_not_tester: nobody reviews their own submission' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "claimer_is_not_tester" BEFORE INSERT OR UPDATE ON "review_claim" FOR EACH ROW EXECUTE FUNCTION "claimer_is_not_tester"();

-- While a review is claimed, nobody else decides.
CREATE FUNCTION "review_is_by_its_claimer"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "submission_revision" r JOIN "review_claim" c ON c."submission_id" = r."submission_id"
             WHERE r."id" = NEW."revision_id" AND c."reviewer_id" <> NEW."reviewer_id" AND c."expires_at" > NEW."at") THEN
    RAISE EXCEPTION 'review_is_by_its_claimer: another reviewer has claimed this review' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "review_is_by_its_claimer" BEFORE INSERT ON "review" FOR EACH ROW EXECUTE FUNCTION "review_is_by_its_claimer"();
