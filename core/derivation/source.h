// Where the numbers of a step come from. What each one is stands in explain/sources.
#pragma once

namespace firn {

enum class Source {
    Definition,
    Recipe,
    Catalogue,
    KitchenUnits,
    Steps,
    SugarDensity,
    EthanolDensity,
    SoluteVolumes,
    FoodVolumes,
    Refraction,
    Prism,
    SugarScale,
    SpecificGravity,
    Baume,
    Egg,
    IceEquilibrium,
    WaterActivity,
    SaltActivity,
    EthanolActivity,
    VapourPressure,
    BoilingPoint,
    Solubility,
    UnfreezableWater,
    GlassLimit,
    FreezingCurve,
    Textbook,
    TextbookFactors,
    Sweetness,
    Spread,
    ServingWindow,
    DessertKinds,
    CrystalSizes,
    Sandiness,
    MeasuredBrix,
    TriangleTest,
    Attribution
};

}  // namespace firn
