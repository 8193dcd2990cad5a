-- CreateTable
CREATE TABLE "retest_draw" (
    "id" UUID NOT NULL,
    "edition_id" UUID NOT NULL,
    "seed" TEXT NOT NULL,
    "percent" DECIMAL NOT NULL,
    "from" TEXT[],
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "retest_draw_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "retest" (
    "spool_id" UUID NOT NULL,
    "draw_id" UUID NOT NULL,
    "submission_id" UUID NOT NULL,

    CONSTRAINT "retest_pkey" PRIMARY KEY ("spool_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "retest_draw_edition_id_key" ON "retest_draw"("edition_id");

-- CreateIndex
CREATE UNIQUE INDEX "retest_submission_id_key" ON "retest"("submission_id");

-- AddForeignKey
ALTER TABLE "retest_draw" ADD CONSTRAINT "retest_draw_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "retest" ADD CONSTRAINT "retest_spool_id_fkey" FOREIGN KEY ("spool_id") REFERENCES "spool"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "retest" ADD CONSTRAINT "retest_draw_id_fkey" FOREIGN KEY ("draw_id") REFERENCES "retest_draw"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "retest" ADD CONSTRAINT "retest_submission_id_fkey" FOREIGN KEY ("submission_id") REFERENCES "submission"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



ALTER TABLE "retest_draw" ADD CONSTRAINT "share_is_a_share" CHECK ("percent" > 0 AND "percent" <= 100);
DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['retest_draw','retest'] LOOP
    EXECUTE format('CREATE TRIGGER "%s_is_append_only" BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION "forbid_change"()', t, t);
    EXECUTE format('CREATE TRIGGER "%s_is_not_emptied" BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"()', t, t);
  END LOOP;
END $$;

-- Who tested it first does not test it again.
CREATE FUNCTION "retest_is_by_another"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW."state" <> 'draft' AND EXISTS (
    SELECT 1 FROM "retest" t JOIN "submission" s ON s."id" = t."submission_id" WHERE t."spool_id" = NEW."spool_id" AND s."tester_id" = NEW."tester_id") THEN
    RAISE EXCEPTION 'retest_is_by_another: another tester pulls this spool' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "retest_is_by_another" BEFORE INSERT OR UPDATE ON "submission" FOR EACH ROW EXECUTE FUNCTION "retest_is_by_another"();
