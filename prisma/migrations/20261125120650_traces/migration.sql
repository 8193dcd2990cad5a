-- CreateTable
CREATE TABLE "trace" (
    "specimen_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "over" TEXT NOT NULL,
    "sample_count" INTEGER NOT NULL,
    "figures" JSONB NOT NULL,
    "points" JSONB NOT NULL,
    "added_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "trace_pkey" PRIMARY KEY ("specimen_id")
);

-- AddForeignKey
ALTER TABLE "trace" ADD CONSTRAINT "trace_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



ALTER TABLE "trace"
  ADD CONSTRAINT "trace_is_over_something_known" CHECK ("over" IN ('extension', 'time')),
  ADD CONSTRAINT "trace_has_samples" CHECK ("sample_count" >= 2),
  ADD CONSTRAINT "trace_has_a_digest" CHECK ("digest" ~ '^[0-9a-f]{64}$');
CREATE TRIGGER "trace_is_append_only" BEFORE UPDATE OR DELETE ON "trace" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "trace_is_not_emptied" BEFORE TRUNCATE ON "trace" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- Evidence is complete before a second person decides on it.
CREATE FUNCTION "trace_comes_before_the_review"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (
    SELECT 1 FROM "specimen" p JOIN "submission_revision" r ON r."id" = p."revision_id"
    JOIN "submission" s ON s."id" = r."submission_id" AND s."revision" = r."number"
    WHERE p."id" = NEW."specimen_id" AND s."state" = 'submitted') THEN
    RAISE EXCEPTION 'trace_comes_before_the_review: a trace is added to a submitted revision, before its review' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "trace_comes_before_the_review" BEFORE INSERT ON "trace" FOR EACH ROW EXECUTE FUNCTION "trace_comes_before_the_review"();
