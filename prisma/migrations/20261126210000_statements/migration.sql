-- What the house says of itself, and what it says beside figures.
CREATE TABLE "house_statement" (
    "id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "contact" TEXT,
    "people" JSONB NOT NULL,
    "funding" TEXT,
    "interests" TEXT,
    "right_of_reply" TEXT,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "house_statement_pkey" PRIMARY KEY ("id")
);
CREATE TABLE "remark" (
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "construction" TEXT,
    "line_slug" TEXT,
    "variant_slug" TEXT,
    "edition_slug" TEXT,
    "category" TEXT,
    "words" TEXT NOT NULL,
    "signed_by" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "supersedes_id" UUID,

    CONSTRAINT "remark_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "remark_is_about_one_thing" CHECK (num_nonnulls("construction", "line_slug", "variant_slug") = 1),
    CONSTRAINT "reply_answers_figures" CHECK (
      CASE "kind"
        WHEN 'reply' THEN "variant_slug" IS NOT NULL AND "edition_slug" IS NOT NULL
        WHEN 'caveat' THEN "edition_slug" IS NULL AND "category" IS NULL
        ELSE FALSE
      END
    ),
    CONSTRAINT "remark_is_signed" CHECK (btrim("words") <> '' AND btrim("signed_by") <> '')
);
CREATE TABLE "remark_end" (
    "remark_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "remark_end_pkey" PRIMARY KEY ("remark_id"),
    CONSTRAINT "ended_remark_says_why" CHECK (btrim("reason") <> '')
);
CREATE UNIQUE INDEX "house_statement_number_key" ON "house_statement"("number");
CREATE UNIQUE INDEX "remark_supersedes_id_key" ON "remark"("supersedes_id");
CREATE INDEX "remark_line_slug_idx" ON "remark"("line_slug");
CREATE INDEX "remark_variant_slug_idx" ON "remark"("variant_slug");
CREATE INDEX "remark_edition_slug_idx" ON "remark"("edition_slug");
ALTER TABLE "remark" ADD CONSTRAINT "remark_line_slug_fkey" FOREIGN KEY ("line_slug") REFERENCES "line"("slug") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "remark" ADD CONSTRAINT "remark_variant_slug_fkey" FOREIGN KEY ("variant_slug") REFERENCES "variant"("slug") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "remark" ADD CONSTRAINT "remark_edition_slug_fkey" FOREIGN KEY ("edition_slug") REFERENCES "edition"("slug") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "remark" ADD CONSTRAINT "remark_supersedes_id_fkey" FOREIGN KEY ("supersedes_id") REFERENCES "remark"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "remark_end" ADD CONSTRAINT "remark_end_remark_id_fkey" FOREIGN KEY ("remark_id") REFERENCES "remark"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What was said stays as it was said; it is superseded or ended, and never changed.
DO $$
DECLARE t TEXT;
BEGIN
  FOREACH t IN ARRAY ARRAY['house_statement', 'remark', 'remark_end'] LOOP
    EXECUTE format('CREATE TRIGGER "%s_is_append_only" BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION "forbid_change"()', t, t);
    EXECUTE format('CREATE TRIGGER "%s_is_not_emptied" BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"()', t, t);
  END LOOP;
END $$;

-- A successor speaks of the same, and what it takes the place of stands no more.
CREATE FUNCTION "successor_speaks_of_the_same"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW."supersedes_id" IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM "remark" r JOIN "remark_end" e ON e."remark_id" = r."id"
    WHERE r."id" = NEW."supersedes_id" AND r."kind" = NEW."kind"
      AND (r."construction", r."line_slug", r."variant_slug", r."edition_slug", r."category")
        IS NOT DISTINCT FROM (NEW."construction", NEW."line_slug", NEW."variant_slug", NEW."edition_slug", NEW."category")
  ) THEN
    RAISE EXCEPTION 'successor_speaks_of_the_same: a remark takes the place of an ended one about the same thing' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "successor_speaks_of_the_same" BEFORE INSERT ON "remark" FOR EACH ROW EXECUTE FUNCTION "successor_speaks_of_the_same"();
