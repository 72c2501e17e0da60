-- CreateEnum
CREATE TYPE "ReleaseKind" AS ENUM ('discount', 'special');

-- CreateEnum
CREATE TYPE "Audience" AS ENUM ('maker', 'client');

-- AlterTable
ALTER TABLE "Inquiry" ADD COLUMN     "authorId" TEXT NOT NULL,
ALTER COLUMN "clientId" DROP NOT NULL,
ALTER COLUMN "ownerId" DROP NOT NULL;

-- AlterTable
ALTER TABLE "OfferRevision" ADD COLUMN     "blocking" JSONB NOT NULL;

-- AlterTable
ALTER TABLE "System" ADD COLUMN     "authorId" TEXT NOT NULL,
ADD COLUMN     "document" JSONB NOT NULL;

-- CreateTable
CREATE TABLE "OfferRelease" (
    "id" TEXT NOT NULL,
    "offerRevisionId" TEXT NOT NULL,
    "what" "ReleaseKind" NOT NULL,
    "note" TEXT NOT NULL,
    "authorId" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "OfferRelease_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "OfferFile" (
    "id" TEXT NOT NULL,
    "offerRevisionId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "audience" "Audience" NOT NULL,
    "mediaType" TEXT NOT NULL,
    "bytes" INTEGER NOT NULL,
    "content" BYTEA NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "OfferFile_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "OfferRelease_offerRevisionId_what_key" ON "OfferRelease"("offerRevisionId", "what");

-- CreateIndex
CREATE UNIQUE INDEX "OfferFile_offerRevisionId_name_audience_key" ON "OfferFile"("offerRevisionId", "name", "audience");

-- AddForeignKey
ALTER TABLE "Inquiry" ADD CONSTRAINT "Inquiry_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "System" ADD CONSTRAINT "System_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "OfferRelease" ADD CONSTRAINT "OfferRelease_offerRevisionId_fkey" FOREIGN KEY ("offerRevisionId") REFERENCES "OfferRevision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "OfferRelease" ADD CONSTRAINT "OfferRelease_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "OfferFile" ADD CONSTRAINT "OfferFile_offerRevisionId_fkey" FOREIGN KEY ("offerRevisionId") REFERENCES "OfferRevision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the schema file cannot say.

-- A release is somebody's word: it is never changed and never deleted.
CREATE TRIGGER "OfferRelease_kept" BEFORE UPDATE OR DELETE ON "OfferRelease"
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- The documents of an offer that was sent stand as they were sent.
CREATE FUNCTION guard_sent_file() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  revision TEXT := CASE TG_OP WHEN 'INSERT' THEN NEW."offerRevisionId" ELSE OLD."offerRevisionId" END;
BEGIN
  PERFORM 1 FROM "OfferRevision" WHERE "id" = revision AND "state" IN ('sent', 'replaced') FOR SHARE;
  IF FOUND THEN
    RAISE EXCEPTION 'Documents of OfferRevision % were sent and are kept as they were', revision
      USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;

CREATE TRIGGER "OfferFile_kept" BEFORE INSERT OR UPDATE OR DELETE ON "OfferFile"
  FOR EACH ROW EXECUTE FUNCTION guard_sent_file();
