-- DropIndex
DROP INDEX "Client_name_key";

-- What the schema file cannot say.

-- Names are the same that differ in case and blanks alone.
CREATE FUNCTION folded_name(name TEXT) RETURNS TEXT LANGUAGE sql IMMUTABLE STRICT PARALLEL SAFE
  RETURN lower(btrim(regexp_replace(name, '\s+', ' ', 'g')));

-- Clients that were entered twice become the one that was entered first; their people and inquiries go to it.
CREATE TEMPORARY TABLE "entered_twice" ON COMMIT DROP AS
  SELECT * FROM (
    SELECT "id", first_value("id") OVER (PARTITION BY folded_name("name") ORDER BY "createdAt", "id") AS "first"
    FROM "Client"
  ) AS "named" WHERE "id" <> "first";
UPDATE "User" SET "clientId" = "first" FROM "entered_twice" AS "twice" WHERE "clientId" = "twice"."id";
UPDATE "Inquiry" SET "clientId" = "first" FROM "entered_twice" AS "twice" WHERE "clientId" = "twice"."id";
DELETE FROM "Client" USING "entered_twice" AS "twice" WHERE "Client"."id" = "twice"."id";

-- CreateIndex
CREATE UNIQUE INDEX "Client_folded_name_key" ON "Client" (folded_name("name"));
