// The names of the regions on the freezing chart: no line strikes through their letters.
#include "analysis/analysis.h"
#include "bench.h"
#include "document/built_in.h"
#include "exchange/recipe_text.h"
#include "gauges/curve_view.h"
#include "gauges/wording.h"

#include <QGuiApplication>
#include <QImage>
#include <gtest/gtest.h>

namespace firn::app {

namespace {

Recipe lessonMix() { return recipeFromText("500 g cucumber\n150 g sucrose\n120 g gin").value(); }

std::vector<CurveRegion> regionsOf(const Analysis& analysis, bool areNamed)
{
    std::vector<CurveRegion> regions;
    for (const FirmnessRegion& region : analysis.texture.regions)
        regions.push_back({region, areNamed ? translatedName(nameOf(region.firmness)) : QString()});
    return regions;
}

QImage pictureOf(const Analysis& analysis, Celsius serveAt, QSize size, const QFont& font, bool areNamed)
{
    CurveView view;
    view.setFont(font);
    view.resize(size);
    view.setCurve(analysis.freezing);
    view.setRegions(regionsOf(analysis, areNamed));
    view.setMarkers({{-18.0, QStringLiteral("70 %"), QStringLiteral("freezer"), CurveMarker::Grip::Square},
        {serveAt.value, QStringLiteral("49 %"), QStringLiteral("serving"), CurveMarker::Grip::Circle}});
    view.setBeginning(QStringLiteral("begins"));
    return view.grab().toImage();
}

/// Letters that stand where there is something else than the ground of a region and its faint grid.
int struckPixels(const QImage& named, const QImage& bare, int& letters)
{
    const QColor ground = QGuiApplication::palette().color(QPalette::Window);
    int struck = 0;
    for (int y = 0; y < bare.height(); ++y) {
        for (int x = 0; x < bare.width(); ++x) {
            if (named.pixel(x, y) == bare.pixel(x, y))
                continue;
            ++letters;
            struck += std::abs(bare.pixelColor(x, y).lightness() - ground.lightness()) > 110 ? 1 : 0;
        }
    }
    return struck;
}

}  // namespace

TEST(CurveNames, StandFreeOfTheCurveAndTheMarkers)
{
    std::vector<Recipe> recipes = builtInSamples();
    recipes.push_back(lessonMix());
    QFont large;
    large.setPixelSize(28);
    for (const Recipe& recipe : recipes) {
        const Analysis analysis = analyse(recipe, shippedCatalogue(), {}, std::size_t{0});
        if (analysis.freezing.steps.empty())
            continue;
        for (const auto& [size, font] : {std::pair(QSize(480, 300), QFont()), std::pair(QSize(1000, 800), large)}) {
            for (double serveAt_c = -20.0; serveAt_c <= -1.0; serveAt_c += 3.0) {
                int letters = 0;
                const QImage named = pictureOf(analysis, {serveAt_c}, size, font, true);
                EXPECT_EQ(struckPixels(named, pictureOf(analysis, {serveAt_c}, size, font, false), letters), 0)
                    << recipe.title << " served at " << serveAt_c << ", " << size.width() << " wide";
                EXPECT_GT(letters, 0);
            }
        }
    }
}

}  // namespace firn::app
