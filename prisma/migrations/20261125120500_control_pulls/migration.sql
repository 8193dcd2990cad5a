-- CreateTable
CREATE TABLE "control_line" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "lot" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "added_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "control_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "control_pull" (
    "id" UUID NOT NULL,
    "control_line_id" UUID NOT NULL,
    "instrument_id" UUID NOT NULL,
    "method_id" UUID NOT NULL,
    "tester_id" UUID NOT NULL,
    "bench_day" DATE NOT NULL,
    "handed_in_at" TIMESTAMPTZ(3) NOT NULL,
    "note" TEXT,

    CONSTRAINT "control_pull_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "control_reading" (
    "control_pull_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "entered_text" TEXT NOT NULL,
    "entered_unit" TEXT NOT NULL,
    "value_si" DECIMAL NOT NULL,

    CONSTRAINT "control_reading_pkey" PRIMARY KEY ("control_pull_id","number")
);

-- CreateTable
CREATE TABLE "control_pull_strike" (
    "control_pull_id" UUID NOT NULL,
    "by_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "control_pull_strike_pkey" PRIMARY KEY ("control_pull_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "control_line_code_key" ON "control_line"("code");

-- CreateIndex
CREATE INDEX "control_pull_instrument_id_method_id_bench_day_idx" ON "control_pull"("instrument_id", "method_id", "bench_day");

-- AddForeignKey
ALTER TABLE "control_pull" ADD CONSTRAINT "control_pull_control_line_id_fkey" FOREIGN KEY ("control_line_id") REFERENCES "control_line"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "control_pull" ADD CONSTRAINT "control_pull_instrument_id_fkey" FOREIGN KEY ("instrument_id") REFERENCES "instrument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "control_pull" ADD CONSTRAINT "control_pull_method_id_fkey" FOREIGN KEY ("method_id") REFERENCES "method"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "control_pull" ADD CONSTRAINT "control_pull_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "control_reading" ADD CONSTRAINT "control_reading_control_pull_id_fkey" FOREIGN KEY ("control_pull_id") REFERENCES "control_pull"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "control_pull_strike" ADD CONSTRAINT "control_pull_strike_control_pull_id_fkey" FOREIGN KEY ("control_pull_id") REFERENCES "control_pull"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



ALTER TABLE "control_line" ADD CONSTRAINT "control_line_has_a_lot" CHECK (length(trim("lot")) > 0);
ALTER TABLE "control_reading" ADD CONSTRAINT "control_reading_is_positive" CHECK ("value_si" > 0 AND "number" > 0);
ALTER TABLE "control_pull_strike" ADD CONSTRAINT "strike_has_a_reason" CHECK (length(trim("reason")) > 0);

DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['control_line','control_pull','control_reading','control_pull_strike'] LOOP
    EXECUTE format('CREATE TRIGGER "%s_is_append_only" BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION "forbid_change"()', t, t);
    EXECUTE format('CREATE TRIGGER "%s_is_not_emptied" BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"()', t, t);
  END LOOP;
END $$;

-- Control pulls watch what pulls, and each is judged by those before it: one chart is written in the order of bench days.
CREATE FUNCTION "control_pull_is_next"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM "instrument" WHERE "id" = NEW."instrument_id" AND "kind" IN ('forceGauge','loadFrame')) THEN
    RAISE EXCEPTION 'control_pull_is_next: only a force gauge or a load frame makes control pulls' USING ERRCODE = 'FP001';
  END IF;
  IF EXISTS (SELECT 1 FROM "control_pull" p WHERE p."instrument_id" = NEW."instrument_id" AND p."method_id" = NEW."method_id" AND p."bench_day" > NEW."bench_day") THEN
    RAISE EXCEPTION 'control_pull_is_next: a control pull of a later bench day is on record' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "control_pull_is_next" BEFORE INSERT ON "control_pull" FOR EACH ROW EXECUTE FUNCTION "control_pull_is_next"();

CREATE FUNCTION "striker_is_not_tester"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "control_pull" p WHERE p."id" = NEW."control_pull_id" AND p."tester_id" = NEW."by_id") THEN
    RAISE EXCEPTION 'striker_is_not_tester: nobody strikes their own control pull' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "striker_is_not_tester" BEFORE INSERT ON "control_pull_strike" FOR EACH ROW EXECUTE FUNCTION "striker_is_not_tester"();

-- What was accepted and came into doubt afterwards is answered in words before an edition closes.
CREATE FUNCTION "edition_closes_without_doubt"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" = 'open' AND NEW."state" = 'closed' AND EXISTS (
    SELECT 1 FROM "submission" s JOIN "submission_revision" r ON r."submission_id" = s."id" AND r."number" = s."revision"
    JOIN "finding" f ON f."revision_id" = r."id"
    WHERE s."edition_id" = NEW."id" AND s."state" = 'accepted' AND f."severity" = 'held' AND f."resolution" IS NULL) THEN
    RAISE EXCEPTION 'edition_closes_without_doubt: held findings of accepted submissions have no answer' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "edition_closes_without_doubt" BEFORE UPDATE ON "edition" FOR EACH ROW EXECUTE FUNCTION "edition_closes_without_doubt"();
