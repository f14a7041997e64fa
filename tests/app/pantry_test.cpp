#include "bench.h"

#include "document/pantry.h"
#include "exchange/catalogue_json.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSignalSpy>
#include <unistd.h>

namespace firn::app {
namespace {

Ingredient syrup(const std::string& name, double sucrose_g = 60.0)
{
    Ingredient ingredient;
    ingredient.name = name;
    ingredient.composition.per100g[Constituent::Water] = Grams{100.0 - sucrose_g};
    ingredient.composition.per100g[Constituent::Sucrose] = Grams{sucrose_g};
    return ingredient;
}

class OwnIngredients : public testing::Test {
protected:
    QString file() { return folder.filePath(QStringLiteral("own/ingredients.json")); }
    void write(const QByteArray& contents)
    {
        QDir().mkpath(QFileInfo(file()).path());
        QFile out(file());
        ASSERT_TRUE(out.open(QIODevice::WriteOnly) && out.write(contents) == contents.size());
    }
    static QByteArray contentsOf(const QString& path)
    {
        QFile in(path);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray("missing");
    }
    QStringList filesBeside() { return QDir(QFileInfo(file()).path()).entryList({QStringLiteral("*.json")}, QDir::Files); }

    QTemporaryDir folder;
};

TEST_F(OwnIngredients, AreThereAgainAtTheNextStart)
{
    Pantry pantry(shippedCatalogue(), file());
    const QSignalSpy changes(&pantry, &Pantry::changed);
    const auto id = pantry.keep(syrup("Quay syrup"));
    ASSERT_TRUE(id) << english(id.error());
    EXPECT_EQ(*id, "quay-syrup");
    EXPECT_EQ(changes.size(), 1);

    const Pantry next(shippedCatalogue(), file());
    EXPECT_EQ(next.own(), pantry.own());
    EXPECT_TRUE(next.isOwn("quay-syrup"));
    EXPECT_FALSE(next.isOwn("strawberry"));
    EXPECT_EQ(next.catalogue().all().size(), shippedCatalogue().all().size() + 1);
}

TEST_F(OwnIngredients, WinANameAndGetAnIdOfTheirOwn)
{
    Pantry pantry(shippedCatalogue(), file());
    const auto first = pantry.keep(syrup("Strawberry"));
    const auto second = pantry.keep(syrup("Strawberry"));
    ASSERT_TRUE(first && second);
    EXPECT_EQ(*first, "strawberry-2");
    EXPECT_EQ(*second, "strawberry-3");
    EXPECT_EQ(pantry.catalogue().find("strawberries")->id, "strawberry-2");
}

TEST_F(OwnIngredients, WithTheIdOfABuiltInOneStandsInItsPlace)
{
    Pantry pantry(shippedCatalogue(), file());
    Ingredient ingredient = syrup("Berry");
    ingredient.id = "strawberry";
    ASSERT_TRUE(pantry.keep(ingredient));
    EXPECT_EQ(pantry.catalogue().all().size(), shippedCatalogue().all().size());
    EXPECT_EQ(pantry.catalogue().find("strawberry")->name, "Berry");
    ASSERT_TRUE(pantry.remove("strawberry"));
    EXPECT_EQ(pantry.catalogue().find("strawberry")->name, "Strawberry");
}

TEST_F(OwnIngredients, AreReplacedByIdAndRemoved)
{
    Pantry pantry(shippedCatalogue(), file());
    Ingredient ingredient = syrup("Quay syrup");
    ingredient.id = pantry.keep(ingredient).value();
    ingredient.name = "Lock syrup";
    EXPECT_EQ(pantry.keep(ingredient).value(), "quay-syrup");
    ASSERT_EQ(pantry.own().size(), 1U);
    EXPECT_EQ(pantry.own().front().name, "Lock syrup");
    ASSERT_TRUE(pantry.remove("quay-syrup"));
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_TRUE(Pantry(shippedCatalogue(), file()).own().empty());
}

TEST_F(OwnIngredients, ThatDoNotCloseAreRefusedAllTogether)
{
    Pantry pantry(shippedCatalogue(), file());
    Ingredient bad = syrup("Bad");
    bad.composition.per100g[Constituent::Water] = Grams{};
    const auto kept = pantry.keepAll({syrup("Good"), bad});
    ASSERT_FALSE(kept);
    EXPECT_NE(english(kept.error()).find("adds up to 60.0 g"), std::string::npos) << english(kept.error());
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_FALSE(QFileInfo::exists(file()));
}

TEST_F(OwnIngredients, TornFileIsSetAsideBeforeAnythingIsWritten)
{
    const QByteArray torn = "{\"format\": \"firn-catalogue\", \"version\": 1, \"ingre";
    write(torn);
    Pantry pantry(shippedCatalogue(), file());
    ASSERT_TRUE(pantry.trouble());
    EXPECT_NE(english(*pantry.trouble()).find("cannot be read"), std::string::npos);
    EXPECT_EQ(pantry.catalogue().all().size(), shippedCatalogue().all().size());
    EXPECT_EQ(contentsOf(file()), torn);
    EXPECT_EQ(filesBeside().size(), 1);

    ASSERT_TRUE(pantry.keep(syrup("Quay syrup")));
    EXPECT_FALSE(pantry.trouble());
    const QStringList files = filesBeside();
    ASSERT_EQ(files.size(), 2);
    EXPECT_TRUE(files.front().startsWith(QStringLiteral("ingredients-unreadable-"))) << files.front().toStdString();
    EXPECT_EQ(contentsOf(QFileInfo(file()).path() + u'/' + files.front()), torn);
    EXPECT_EQ(Pantry(shippedCatalogue(), file()).own().size(), 1U);
}

TEST_F(OwnIngredients, ThatAnotherCopyOfTheProgramKeptAreNotLost)
{
    Pantry here(shippedCatalogue(), file());
    Pantry there(shippedCatalogue(), file());
    ASSERT_TRUE(here.keep(syrup("Quay syrup")));
    EXPECT_EQ(there.keep(syrup("Quay syrup", 50.0)).value(), "quay-syrup-2");
    ASSERT_TRUE(here.keep(syrup("Lock syrup")));
    EXPECT_EQ(here.own().size(), 3U);
    EXPECT_EQ(Pantry(shippedCatalogue(), file()).own(), here.own());
}

TEST_F(OwnIngredients, NothingChangesWhereNothingCanBeWritten)
{
    write("not a folder");
    // A file stands where the folder should be: not even the administrator can write there.
    Pantry pantry(shippedCatalogue(), file() + QStringLiteral("/ingredients.json"));
    const QSignalSpy changes(&pantry, &Pantry::changed);
    const auto kept = pantry.keep(syrup("Quay syrup"));
    ASSERT_FALSE(kept);
    EXPECT_NE(english(kept.error()).find("could not be written, so nothing was changed"), std::string::npos);
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_EQ(changes.size(), 0);
}

TEST_F(OwnIngredients, ReadOnlyFolderIsSaid)
{
    if (geteuid() == 0)
        GTEST_SKIP() << "the administrator may write everywhere";
    Pantry pantry(shippedCatalogue(), file());
    ASSERT_TRUE(pantry.keep(syrup("Quay syrup")));
    QFile::setPermissions(QFileInfo(file()).path(), QFile::ReadOwner | QFile::ExeOwner);
    const auto kept = pantry.keep(syrup("Lock syrup"));
    QFile::setPermissions(QFileInfo(file()).path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    ASSERT_FALSE(kept);
    EXPECT_EQ(pantry.own().size(), 1U);
    EXPECT_EQ(Pantry(shippedCatalogue(), file()).own().size(), 1U);
}

TEST_F(OwnIngredients, ExchangeTakesAnImportBack)
{
    Pantry pantry(shippedCatalogue(), file());
    Ingredient before = syrup("Quay syrup");
    before.id = pantry.keep(before).value();
    Ingredient after = before;
    after.name = "Quay syrup, new";
    const auto ids = pantry.keepAll({after, syrup("Lock syrup")}).value();
    EXPECT_EQ(pantry.own().size(), 2U);
    ASSERT_TRUE(pantry.exchange(ids, {before}));
    EXPECT_EQ(pantry.own(), std::vector<Ingredient>{before});
}

}  // namespace
}  // namespace firn::app
