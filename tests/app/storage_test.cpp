// Disks that are full, cannot be written or go away, for real: small file systems that only the test sees. And several writers of one file.
#include "bench.h"
#include "small_disk.h"

#include "document/edits.h"
#include "document/recipe_file.h"
#include "document/recovery.h"
#include "exchange/recipe_json.h"
#include "print/printing.h"

#include <QDir>
#include <sys/wait.h>
#include <unistd.h>

namespace firn::app {
namespace {

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// A saved recipe, and an edit that makes it larger than the disk.
struct LargeEdit {
    explicit LargeEdit(const std::string& folder)
        : document(shippedCatalogue())
        , file(QString::fromStdString(folder) + QStringLiteral("/granita.firn"))
    {
        changeTitle(document, "Granita");
        isSaved = document.saveAs(file).has_value();
        before = bytesOf(file);
        changeNotes(document, std::string(200000, 'x'));
    }
    std::string complaints() const { return complaint(isSaved && !before.isEmpty(), "the small recipe could not be saved"); }
    bool isStillThere() const { return document.recipe().notes.size() == 200000 && document.isModified(); }

    Document document;
    QString file;
    QByteArray before;
    bool isSaved = false;
};

TEST(Storage, AFullDiskLeavesTheFileAndTheRecipe)
{
    onSmallDisk([](const std::string& folder) {
        LargeEdit edit(folder);
        std::string wrong = edit.complaints();
        const auto saved = edit.document.saveAs(edit.file);
        wrong += complaint(!saved, "a recipe larger than the disk was said to be saved");
        wrong += complaint(bytesOf(edit.file) == edit.before, "the file was harmed");
        wrong += complaint(edit.isStillThere(), "the edit was lost");
        wrong += complaint(QDir(QString::fromStdString(folder)).entryList(QDir::Files).size() == 1, "litter was left behind");
        if (!saved)
            wrong +=
                complaint(english(saved.error()).find("granita.firn could not be saved because the disk is full. Free some space")
                              != std::string::npos,
                    "the cause or the way out is not said");
        // Room is made: now it goes.
        wrong += complaint(mount("firn", folder.c_str(), "tmpfs", MS_REMOUNT, "size=1024k") == 0, "no room could be made");
        wrong += complaint(edit.document.saveAs(edit.file).has_value(), "it could not be saved after room was made");
        wrong += complaint(recipeFromJson(bytesOf(edit.file).toStdString())->notes.size() == 200000, "the new file is not whole");
        return wrong;
    });
}

TEST(Storage, AFullDiskLeavesThePdfThatWasThere)
{
    onSmallDisk([](const std::string& folder) {
        const QString file = QString::fromStdString(folder) + QStringLiteral("/pages.pdf");
        const QPageSize paper(QPageSize::A4);
        Handout handout{"Title", {{"Head", {}, {{TextBlock{"text"}}}}}};
        std::string wrong = complaint(writePdf(handout, paper, file).has_value(), "a small PDF could not be written");
        const QByteArray before = bytesOf(file);
        wrong += complaint(before.startsWith("%PDF"), "no PDF was written");
        for (int i = 0; i < 20000; ++i)
            handout.sections.front().blocks.push_back({TextBlock{QString::number(i * i)}});
        const auto written = writePdf(handout, paper, file);
        wrong += complaint(!written, "a PDF larger than the disk was said to be written");
        wrong += complaint(bytesOf(file) == before, "the PDF that was there was harmed");
        if (!written)
            wrong += complaint(
                english(written.error()).find("pages.pdf could not be saved because the disk is full") != std::string::npos,
                "the cause is not said");
        return wrong;
    });
}

TEST(Storage, AFullDiskForRecoveryIsSaidAndLosesNothing)
{
    onSmallDisk([](const std::string& folder) {
        const QString recoveries = QString::fromStdString(folder) + QStringLiteral("/recovery");
        Document document(shippedCatalogue());
        Recovery recovery(document, recoveries);
        int said = 0;
        QObject::connect(&recovery, &Recovery::failed, &recovery, [&said] { ++said; });
        changeTitle(document, "kept");
        recovery.writeNow();
        recovery.finishWriting();
        changeNotes(document, std::string(200000, 'x'));
        for (int i = 0; i < 2; ++i) {
            recovery.writeNow();
            recovery.finishWriting();
        }
        std::string wrong = complaint(said == 1, "it was not said once");
        wrong += complaint(document.recipe().notes.size() == 200000, "the edit was lost");
        const QStringList files = QDir(recoveries).entryList({QStringLiteral("*.json"), QStringLiteral("*.firn*")}, QDir::Files);
        wrong += complaint(!files.isEmpty(), "what was kept before the disk was full is gone");
        return wrong;
    });
}

TEST(Storage, AReadOnlyDiskLeavesTheFileAndTheRecipe)
{
    onSmallDisk([](const std::string& folder) {
        LargeEdit edit(folder);
        std::string wrong =
            complaint(mount("firn", folder.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) == 0, "not read-only");
        const auto saved = edit.document.saveAs(edit.file);
        wrong += complaint(!saved, "it was said to be saved");
        if (!saved)
            wrong += complaint(english(saved.error()).find("the disk is read-only. Save elsewhere.") != std::string::npos,
                "the cause or the way out is not said");
        wrong += complaint(bytesOf(edit.file) == edit.before, "the file was harmed");
        wrong += complaint(edit.isStillThere(), "the edit was lost");
        const QTemporaryDir elsewhere;
        wrong += complaint(
            edit.document.saveAs(elsewhere.filePath(QStringLiteral("granita.firn"))).has_value(), "no other place will do");
        return wrong;
    });
}

TEST(Storage, AStickThatIsPulledOutLeavesTheRecipe)
{
    onSmallDisk([](const std::string& folder) {
        LargeEdit edit(folder);
        std::string wrong = edit.complaints();
        wrong += complaint(umount2(folder.c_str(), MNT_DETACH) == 0, "it could not be pulled out");
        wrong += complaint(rmdir(folder.c_str()) == 0, "its place is still there");
        const auto saved = edit.document.saveAs(edit.file);
        wrong += complaint(!saved, "it was said to be saved");
        wrong += complaint(edit.isStillThere(), "the edit was lost");
        if (!saved)
            wrong += complaint(english(saved.error()).find("its folder is missing. Create the folder") != std::string::npos,
                "the cause or the way out is not said");
        return wrong;
    });
}

TEST(Storage, SeveralWritersAtOnceLeaveAWholeFile)
{
    constexpr int writers = 4;
    constexpr int savesOfEach = 50;
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("granita.firn"));
    ASSERT_TRUE(writeFile(file, contentsFor(Recipe(), file)));
    std::vector<pid_t> children;
    for (int writer = 1; writer <= writers; ++writer) {
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            bool isFine = true;
            Recipe recipe;
            recipe.notes.assign(std::size_t(writer) * 20000, char('a' + writer));
            for (int save = 0; save < savesOfEach; ++save)
                isFine = writeFile(file, contentsFor(recipe, file)).has_value() && isFine;
            _exit(isFine ? 0 : 1);
        }
        children.push_back(child);
    }
    int reads = 0;
    for (std::size_t ended = 0; ended < children.size();) {
        const auto recipe = recipeFromJson(bytesOf(file).toStdString());
        ASSERT_TRUE(recipe) << english(recipe.error());
        ASSERT_EQ(recipe->notes.size() % 20000, 0U);
        ASSERT_EQ(recipe->notes.find_first_not_of(recipe->notes.substr(0, 1)), std::string::npos) << "two recipes in one";
        ++reads;
        int status = 0;
        if (waitpid(children[ended], &status, WNOHANG) == children[ended]) {
            EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << "a save failed";
            ++ended;
        }
    }
    EXPECT_GT(reads, writers);
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), 1) << "litter was left behind";
}

TEST(Storage, TheSecondOfTwoWindowsSeesThatTheFileHasChanged)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("granita.firn"));
    Document first(shippedCatalogue());
    Document second(shippedCatalogue());
    changeTitle(first, "Granita");
    ASSERT_TRUE(first.saveAs(file));
    ASSERT_TRUE(second.open(file));
    changeTitle(first, "Granita of the first window");
    changeTitle(second, "Granita of the second window");
    ASSERT_TRUE(first.saveAs(file));
    for (Document* document : {&first, &second})
        document->see(file, lookAt(Disk(), file));
    EXPECT_EQ(first.onDisk(), OnDisk::AsKnown);
    EXPECT_EQ(second.onDisk(), OnDisk::Changed);
    EXPECT_TRUE(std::holds_alternative<ChangedByOthers>(saveRecipe(Disk(), second.beginSaving(file))));
}

}  // namespace
}  // namespace firn::app
