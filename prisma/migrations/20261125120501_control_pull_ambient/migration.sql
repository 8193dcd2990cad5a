-- Air at the bench, as entered and in SI; a pull from before this was asked has none.
ALTER TABLE "control_pull"
  ADD COLUMN "temperature_text" TEXT,
  ADD COLUMN "temperature_unit" TEXT,
  ADD COLUMN "temperature_c" DECIMAL,
  ADD COLUMN "humidity_percent" DECIMAL;

ALTER TABLE "control_pull"
  ADD CONSTRAINT "control_pull_air_is_whole" CHECK (num_nulls("temperature_text", "temperature_unit", "temperature_c", "humidity_percent") IN (0, 4)),
  ADD CONSTRAINT "control_pull_humidity_is_a_share" CHECK ("humidity_percent" BETWEEN 0 AND 100);
