-- AlterTable
ALTER TABLE "instrument" ADD COLUMN     "retired_on" DATE,
ADD COLUMN     "retired_reason" TEXT;

-- AlterTable
ALTER TABLE "spool" ADD COLUMN     "retired_on" DATE,
ADD COLUMN     "retired_reason" TEXT;

ALTER TABLE "spool" ADD CONSTRAINT "retired_spool_says_why" CHECK (("retired_on" IS NULL) = ("retired_reason" IS NULL));
ALTER TABLE "instrument" ADD CONSTRAINT "retired_instrument_says_why" CHECK (("retired_on" IS NULL) = ("retired_reason" IS NULL));
