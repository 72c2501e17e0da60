-- CreateEnum
CREATE TYPE "CatalogueState" AS ENUM ('draft', 'released', 'discarded');

-- CreateEnum
CREATE TYPE "CatalogueAction" AS ENUM ('opened', 'item_saved', 'item_removed', 'price_list_saved', 'tables_saved', 'imported', 'released', 'discarded');

-- CreateTable
CREATE TABLE "CatalogueRevision" (
    "id" TEXT NOT NULL,
    "number" SERIAL NOT NULL,
    "name" TEXT NOT NULL,
    "state" "CatalogueState" NOT NULL DEFAULT 'draft',
    "note" TEXT NOT NULL DEFAULT '',
    "maker" TEXT NOT NULL,
    "priceLists" JSON NOT NULL,
    "tables" JSON NOT NULL,
    "basedOnId" TEXT,
    "authorId" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "releasedAt" TIMESTAMP(3),
    "releasedById" TEXT,

    CONSTRAINT "CatalogueRevision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CatalogueItem" (
    "revisionId" TEXT NOT NULL,
    "id" TEXT NOT NULL,
    "slot" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "document" JSON NOT NULL,

    CONSTRAINT "CatalogueItem_pkey" PRIMARY KEY ("revisionId","id")
);

-- CreateTable
CREATE TABLE "CatalogueChange" (
    "id" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "action" "CatalogueAction" NOT NULL,
    "subject" TEXT,
    "before" JSON,
    "after" JSON,
    "authorId" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "CatalogueChange_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "CatalogueRevision_number_key" ON "CatalogueRevision"("number");

-- CreateIndex
CREATE UNIQUE INDEX "CatalogueRevision_name_key" ON "CatalogueRevision"("name");

-- CreateIndex
CREATE INDEX "CatalogueRevision_state_releasedAt_idx" ON "CatalogueRevision"("state", "releasedAt");

-- CreateIndex
CREATE UNIQUE INDEX "CatalogueChange_revisionId_version_key" ON "CatalogueChange"("revisionId", "version");

-- AddForeignKey
ALTER TABLE "CatalogueRevision" ADD CONSTRAINT "CatalogueRevision_basedOnId_fkey" FOREIGN KEY ("basedOnId") REFERENCES "CatalogueRevision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CatalogueRevision" ADD CONSTRAINT "CatalogueRevision_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CatalogueRevision" ADD CONSTRAINT "CatalogueRevision_releasedById_fkey" FOREIGN KEY ("releasedById") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CatalogueItem" ADD CONSTRAINT "CatalogueItem_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "CatalogueRevision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CatalogueChange" ADD CONSTRAINT "CatalogueChange_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "CatalogueRevision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CatalogueChange" ADD CONSTRAINT "CatalogueChange_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the schema file cannot say.

-- Of people's drafts one is open at a time.
CREATE UNIQUE INDEX "CatalogueRevision_one_draft" ON "CatalogueRevision" ((TRUE))
  WHERE "state" = 'draft' AND "authorId" IS NOT NULL;

ALTER TABLE "CatalogueRevision" ADD CONSTRAINT "CatalogueRevision_released_at"
  CHECK (("state" = 'released') = ("releasedAt" IS NOT NULL));

-- A revision of the catalogue begins as a draft; what was released or discarded is never changed, and none is deleted.
CREATE FUNCTION guard_catalogue_revision() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'INSERT' THEN
    IF NEW."state" = 'draft' THEN RETURN NEW; END IF;
    RAISE EXCEPTION 'CatalogueRevision % has to begin as a draft', NEW."id" USING ERRCODE = 'restrict_violation';
  END IF;
  IF TG_OP = 'UPDATE' AND OLD."state" = 'draft' THEN RETURN NEW; END IF;
  RAISE EXCEPTION 'CatalogueRevision % is kept as it is', OLD."id" USING ERRCODE = 'restrict_violation';
END $$;

CREATE TRIGGER "CatalogueRevision_kept" BEFORE INSERT OR UPDATE OR DELETE ON "CatalogueRevision"
  FOR EACH ROW EXECUTE FUNCTION guard_catalogue_revision();

-- Items change in drafts alone. Told of whole statements, so that many items at once cost no more than one.
CREATE FUNCTION guard_catalogue_items() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  kept TEXT;
BEGIN
  -- Locked before it is looked at: a release that is under way is waited for.
  PERFORM 1 FROM "CatalogueRevision" WHERE "id" IN (SELECT DISTINCT "revisionId" FROM changed) FOR SHARE;
  SELECT "name" INTO kept FROM "CatalogueRevision"
    WHERE "id" IN (SELECT DISTINCT "revisionId" FROM changed) AND "state" <> 'draft' LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'Items of catalogue % are kept as they are', kept USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NULL;
END $$;

CREATE TRIGGER "CatalogueItem_added" AFTER INSERT ON "CatalogueItem"
  REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION guard_catalogue_items();
CREATE TRIGGER "CatalogueItem_taken_from" AFTER UPDATE ON "CatalogueItem"
  REFERENCING OLD TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION guard_catalogue_items();
CREATE TRIGGER "CatalogueItem_given_to" AFTER UPDATE ON "CatalogueItem"
  REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION guard_catalogue_items();
CREATE TRIGGER "CatalogueItem_removed" AFTER DELETE ON "CatalogueItem"
  REFERENCING OLD TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION guard_catalogue_items();

-- Who changed what is never changed and never deleted.
CREATE TRIGGER "CatalogueChange_kept" BEFORE UPDATE OR DELETE ON "CatalogueChange"
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
