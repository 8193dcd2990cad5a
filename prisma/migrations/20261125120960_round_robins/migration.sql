-- CreateTable
CREATE TABLE "round_robin" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "method_id" UUID NOT NULL,
    "levels" TEXT[],
    "specimens" INTEGER NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'planned',
    "closed_on" DATE,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "round_robin_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "round_robin_tester" (
    "round_robin_id" UUID NOT NULL,
    "tester_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,

    CONSTRAINT "round_robin_tester_pkey" PRIMARY KEY ("round_robin_id","tester_id")
);

-- CreateTable
CREATE TABLE "round_robin_cell" (
    "id" UUID NOT NULL,
    "round_robin_id" UUID NOT NULL,
    "tester_id" UUID NOT NULL,
    "level" TEXT NOT NULL,
    "instrument_id" UUID NOT NULL,
    "handed_in_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "round_robin_cell_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "round_robin_reading" (
    "cell_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "entered_text" TEXT NOT NULL,
    "entered_unit" TEXT NOT NULL,
    "value_si" DECIMAL NOT NULL,

    CONSTRAINT "round_robin_reading_pkey" PRIMARY KEY ("cell_id","number")
);

-- CreateIndex
CREATE UNIQUE INDEX "round_robin_slug_key" ON "round_robin"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "round_robin_tester_round_robin_id_number_key" ON "round_robin_tester"("round_robin_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "round_robin_cell_round_robin_id_tester_id_level_key" ON "round_robin_cell"("round_robin_id", "tester_id", "level");

-- AddForeignKey
ALTER TABLE "round_robin" ADD CONSTRAINT "round_robin_method_id_fkey" FOREIGN KEY ("method_id") REFERENCES "method"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round_robin_tester" ADD CONSTRAINT "round_robin_tester_round_robin_id_fkey" FOREIGN KEY ("round_robin_id") REFERENCES "round_robin"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round_robin_tester" ADD CONSTRAINT "round_robin_tester_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round_robin_cell" ADD CONSTRAINT "round_robin_cell_round_robin_id_fkey" FOREIGN KEY ("round_robin_id") REFERENCES "round_robin"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round_robin_cell" ADD CONSTRAINT "round_robin_cell_instrument_id_fkey" FOREIGN KEY ("instrument_id") REFERENCES "instrument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round_robin_reading" ADD CONSTRAINT "round_robin_reading_cell_id_fkey" FOREIGN KEY ("cell_id") REFERENCES "round_robin_cell"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



ALTER TABLE "round_robin"
  ADD CONSTRAINT "round_robin_state_is_known" CHECK ("state" IN ('planned', 'open', 'closed')),
  ADD CONSTRAINT "round_robin_has_levels" CHECK (cardinality("levels") > 0),
  ADD CONSTRAINT "round_robin_repeats" CHECK ("specimens" >= 2),
  ADD CONSTRAINT "closed_round_robin_has_a_day" CHECK (("state" = 'closed') = ("closed_on" IS NOT NULL));
ALTER TABLE "round_robin_reading" ADD CONSTRAINT "round_robin_reading_is_positive" CHECK ("value_si" > 0 AND "number" > 0);
DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['round_robin_tester','round_robin_cell','round_robin_reading'] LOOP
    EXECUTE format('CREATE TRIGGER "%s_is_append_only" BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION "forbid_change"()', t, t);
    EXECUTE format('CREATE TRIGGER "%s_is_not_emptied" BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"()', t, t);
  END LOOP;
END $$;

-- A plan stands; it goes from planned to open to closed.
CREATE FUNCTION "round_robin_stands"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' OR (OLD."slug", OLD."name", OLD."words", OLD."method_id", OLD."levels", OLD."specimens")
       IS DISTINCT FROM (NEW."slug", NEW."name", NEW."words", NEW."method_id", NEW."levels", NEW."specimens")
     OR NOT (OLD."state", NEW."state") IN (('planned', 'open'), ('open', 'closed')) THEN
    RAISE EXCEPTION 'round_robin_stands: a plan never changes, and goes from planned to open to closed' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "round_robin_stands" BEFORE UPDATE OR DELETE ON "round_robin" FOR EACH ROW EXECUTE FUNCTION "round_robin_stands"();

CREATE FUNCTION "cell_belongs_to_the_plan"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (
    SELECT 1 FROM "round_robin" r JOIN "round_robin_tester" t ON t."round_robin_id" = r."id" AND t."tester_id" = NEW."tester_id"
    WHERE r."id" = NEW."round_robin_id" AND r."state" = 'open' AND NEW."level" = ANY(r."levels")) THEN
    RAISE EXCEPTION 'cell_belongs_to_the_plan: only a tester of an open round robin hands in, and only its spools' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "cell_belongs_to_the_plan" BEFORE INSERT ON "round_robin_cell" FOR EACH ROW EXECUTE FUNCTION "cell_belongs_to_the_plan"();

-- Control pulls and round robins are pulled until the line parts.
CREATE FUNCTION "method_breaks_lines"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM "method_version" WHERE "method_id" = NEW."method_id" AND "limits"->>'timeToBreakS' IS NOT NULL) THEN
    RAISE EXCEPTION 'method_breaks_lines: no version of this method breaks a line' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "method_breaks_lines" BEFORE INSERT ON "control_pull" FOR EACH ROW EXECUTE FUNCTION "method_breaks_lines"();
CREATE TRIGGER "method_breaks_lines" BEFORE INSERT ON "round_robin" FOR EACH ROW EXECUTE FUNCTION "method_breaks_lines"();
