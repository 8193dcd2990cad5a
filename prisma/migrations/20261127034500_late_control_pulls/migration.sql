-- A control pull that comes in after one of a later bench day is kept and marked: it judges nothing, as those of later days were judged without it.
ALTER TABLE "control_pull" ADD COLUMN "is_late" BOOLEAN NOT NULL DEFAULT false;

CREATE OR REPLACE FUNCTION "control_pull_is_next"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM "instrument" WHERE "id" = NEW."instrument_id" AND "kind" IN ('forceGauge','loadFrame')) THEN
    RAISE EXCEPTION 'control_pull_is_next: only a force gauge or a load frame makes control pulls' USING ERRCODE = 'FP001';
  END IF;
  NEW."is_late" := EXISTS (
    SELECT 1 FROM "control_pull" p
    WHERE p."instrument_id" = NEW."instrument_id" AND p."method_id" = NEW."method_id" AND p."bench_day" > NEW."bench_day"
      AND NOT EXISTS (SELECT 1 FROM "control_pull_strike" s WHERE s."control_pull_id" = p."id"));
  RETURN NEW;
END $$;
