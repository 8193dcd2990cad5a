-- An edition has one or more divisions, each with its own scheme. No release of the program had another form, so the old column goes at once.
CREATE TABLE "division" (
    "id" UUID NOT NULL,
    "edition_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "slug" TEXT,
    "name" TEXT,
    "materials" TEXT[],
    "constructions" TEXT[],
    "scheme_id" UUID NOT NULL,

    CONSTRAINT "division_pkey" PRIMARY KEY ("id")
);
CREATE TABLE "overruling" (
    "entry_id" UUID NOT NULL,
    "division_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "overruling_pkey" PRIMARY KEY ("entry_id")
);
CREATE UNIQUE INDEX "division_edition_id_position_key" ON "division"("edition_id", "position");
CREATE UNIQUE INDEX "division_edition_id_slug_key" ON "division"("edition_id", "slug");
CREATE INDEX "division_scheme_id_idx" ON "division"("scheme_id");
CREATE INDEX "overruling_division_id_idx" ON "overruling"("division_id");
ALTER TABLE "division" ADD CONSTRAINT "division_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "division" ADD CONSTRAINT "division_scheme_id_fkey" FOREIGN KEY ("scheme_id") REFERENCES "scheme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "overruling" ADD CONSTRAINT "overruling_entry_id_fkey" FOREIGN KEY ("entry_id") REFERENCES "entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "overruling" ADD CONSTRAINT "overruling_division_id_fkey" FOREIGN KEY ("division_id") REFERENCES "division"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

INSERT INTO "division" ("id", "edition_id", "position", "materials", "constructions", "scheme_id")
  SELECT gen_random_uuid(), "id", 0, '{}', '{}', "scheme_id" FROM "edition";

ALTER TABLE "division" ADD CONSTRAINT "division_is_named_or_alone" CHECK (
  ("slug" IS NULL) = ("name" IS NULL) AND ("slug" IS NOT NULL OR ("position" = 0 AND "materials" = '{}' AND "constructions" = '{}')));
ALTER TABLE "overruling" ADD CONSTRAINT "overruling_has_a_reason" CHECK (length(trim("reason")) > 0);

-- What an edition ranks by stands with its divisions now, and is fixed there when it opens.
CREATE OR REPLACE FUNCTION "edition_moves_forward"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" <> NEW."state" AND (OLD."state", NEW."state") NOT IN (('planned','open'), ('open','closed'), ('closed','published')) THEN
    RAISE EXCEPTION 'edition_moves_forward: % to % is not a step', OLD."state", NEW."state" USING ERRCODE = 'FP001';
  END IF;
  IF OLD."state" <> 'planned' AND (OLD."blind_key_digest", OLD."check_set_version") IS DISTINCT FROM (NEW."blind_key_digest", NEW."check_set_version") THEN
    RAISE EXCEPTION 'opening_pins_the_rules: divisions with their schemes, key digest and checks are fixed when an edition opens' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
ALTER TABLE "edition" DROP COLUMN "scheme_id";

CREATE FUNCTION "opening_pins_the_divisions"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  of_edition uuid;
BEGIN
  IF TG_OP = 'INSERT' THEN of_edition := NEW."edition_id"; ELSE of_edition := OLD."edition_id"; END IF;
  IF EXISTS (SELECT 1 FROM "edition" e WHERE e."id" = of_edition AND e."state" <> 'planned') THEN
    RAISE EXCEPTION 'opening_pins_the_rules: divisions with their schemes, key digest and checks are fixed when an edition opens' USING ERRCODE = 'FP001';
  END IF;
  IF TG_OP = 'DELETE' THEN RETURN OLD; END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "opening_pins_the_divisions" BEFORE INSERT OR UPDATE OR DELETE ON "division" FOR EACH ROW EXECUTE FUNCTION "opening_pins_the_divisions"();
CREATE TRIGGER "division_is_not_emptied" BEFORE TRUNCATE ON "division" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- Looked at when a transaction ends: a plan that is changed has its divisions written anew.
CREATE FUNCTION "edition_has_divisions"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  of_edition uuid;
BEGIN
  IF TG_TABLE_NAME = 'edition' THEN of_edition := NEW."id"; ELSIF TG_OP = 'DELETE' THEN of_edition := OLD."edition_id"; ELSE of_edition := NEW."edition_id"; END IF;
  IF EXISTS (SELECT 1 FROM "edition" e WHERE e."id" = of_edition)
     AND (SELECT count(*) = 0 OR (count(*) > 1 AND bool_or(d."slug" IS NULL)) FROM "division" d WHERE d."edition_id" = of_edition) THEN
    RAISE EXCEPTION 'edition_has_divisions: an edition has one division, or several that each have a name' USING ERRCODE = 'FP001';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER "edition_has_divisions" AFTER INSERT ON "edition" DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION "edition_has_divisions"();
CREATE CONSTRAINT TRIGGER "edition_has_divisions" AFTER INSERT OR UPDATE OR DELETE ON "division" DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION "edition_has_divisions"();

CREATE FUNCTION "overruling_is_of_its_edition"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM "entry" n JOIN "division" d ON d."edition_id" = n."edition_id"
      WHERE n."id" = NEW."entry_id" AND d."id" = NEW."division_id" AND d."slug" IS NOT NULL) THEN
    RAISE EXCEPTION 'overruling_is_of_its_edition: an entry goes into one of the divisions of its own edition' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "overruling_is_of_its_edition" BEFORE INSERT OR UPDATE ON "overruling" FOR EACH ROW EXECUTE FUNCTION "overruling_is_of_its_edition"();

-- As api/editions/divisions.ts puts it: the division that an editor says, else the one whose rule fits the line.
CREATE FUNCTION "entry_is_in_one_division"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" <> NEW."state" AND EXISTS (
      SELECT 1 FROM "entry" n JOIN "variant" v ON v."id" = n."variant_id" JOIN "line" l ON l."id" = v."line_id"
      WHERE n."edition_id" = NEW."id" AND NOT EXISTS (SELECT 1 FROM "overruling" o WHERE o."entry_id" = n."id")
        AND 1 <> (SELECT count(*) FROM "division" d WHERE d."edition_id" = NEW."id"
          AND (d."materials" = '{}' OR EXISTS (SELECT 1 FROM unnest(d."materials") m WHERE lower(m) = lower(l."material")))
          AND (d."constructions" = '{}' OR l."construction" = ANY (d."constructions")))) THEN
    RAISE EXCEPTION 'entry_is_in_one_division: an edition moves on when each entry is in one of its divisions' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "entry_is_in_one_division" BEFORE UPDATE ON "edition" FOR EACH ROW EXECUTE FUNCTION "entry_is_in_one_division"();
