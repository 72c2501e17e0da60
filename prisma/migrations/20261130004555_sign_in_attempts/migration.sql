-- CreateTable
CREATE TABLE "SignInAttempts" (
    "key" TEXT NOT NULL,
    "points" INTEGER NOT NULL,
    "expire" TIMESTAMP(3),

    CONSTRAINT "SignInAttempts_pkey" PRIMARY KEY ("key")
);
