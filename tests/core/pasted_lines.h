// Lines of recipes as people write and paste them, with what they say: line | amount | ingredient | mark. The ingredient is an id of the
// shipped catalogue. Marks: ~ a mean, said in the note; - listed without an amount that can be weighed; ! cannot be read, so that the
// whole line stands as it is.
#pragma once

#include <string_view>

namespace firn {

inline constexpr std::string_view plainLines = R"(
250 g water | 250 g | water |
250g water | 250 g | water |
190 g granulated sugar | 190 g | sucrose |
1 1/2 cups granulated sugar | 1.5 cup | sucrose |
1½ cups whole milk | 1.5 cup | whole-milk |
½ cup honey | 0.5 cup | honey |
⅓ cup lemon juice | 0.33333333333333331 cup | lemon-juice |
1⁄2 cup lime juice | 0.5 cup | lime-juice |
2/3 cup buttermilk | 0.66666666666666663 cup | buttermilk |
0,5 l whole milk | 0.5 l | whole-milk |
0.75 L water | 0.75 l | water |
25 cl perry | 250 ml | perry |
1,5 dl heavy whipping cream | 150 ml | heavy-cream |
2 tbsp. glucose syrup | 2 tbsp | glucose-syrup-42 |
1 tsp. vanilla extract | 1 tsp | vanilla-extract |
2 Tbsp dry white wine | 2 tbsp | white-wine |
3 t gelatin powder | 3 tsp | gelatin |
1 T gin | 1 tbsp | gin |
4 fl. oz. dry white wine | 4 fl oz | white-wine |
8 oz cream cheese | 8 oz | cream-cheese |
1 lb rhubarb | 1 lb | rhubarb |
1 quart whole milk | 1 qt | whole-milk |
12 egg yolks | 12 piece | egg-yolk |
2 large eggs | 2 piece | egg |
1 banana | 1 piece | banana |
500 ML PERRY | 500 ml | perry |
100 G CASTER SUGAR | 100 g | sucrose |
GRANULATED SUGAR 200 G | 200 g | sucrose |
two eggs | 2 piece | egg |
half a lemon | 0.5 piece | lemon |
Half a cup of honey | 0.5 cup | honey |
three quarters of a cup of water | 0.75 cup | water |
a cup of buttermilk | 1 cup | buttermilk |
an egg | 1 piece | egg |
200 g of sugar | 200 g | sucrose |
2 cups of the sugar | 2 cup | sucrose |
12 % sugar | 12 % | sucrose |
2% milk 500 g | 500 g | reduced-fat-milk |
)";

inline constexpr std::string_view amountLastLines = R"(
Sugar – 200 g | 200 g | sucrose |
Sugar.....200 g | 200 g | sucrose |
Sugar . . . . 200 g | 200 g | sucrose |
Water: 500 ml | 500 ml | water |
Rhubarb 300g | 300 g | rhubarb |
Honey - 2 tbsp | 2 tbsp | honey |
Gin, 60 ml | 60 ml | gin |
Whole milk … 500 ml | 500 ml | whole-milk |
Egg yolks x 4 | 4 piece | egg-yolk |
Eggs: 3 | 3 piece | egg |
Sugar = 200 g | 200 g | sucrose |
Salt 1 pinch | 1 pinch | salt |
Sugar 1 1/2 cups | 1.5 cup | sucrose |
Pears (500 g) | 500 g | pear |
Honey — 80 g | 80 g | honey |
Rhubarb, about 300 g | 300 g | rhubarb |
)";

inline constexpr std::string_view listedLines = R"(
- 250 g water | 250 g | water |
• 2 tbsp honey | 2 tbsp | honey |
* 60 ml gin | 60 ml | gin |
☐ 200 g sugar | 200 g | sucrose |
▢ 500 ml perry | 500 ml | perry |
[ ] 300 g pears | 300 g | pear |
- [x] 1 tsp salt | 1 tsp | salt |
✓ 100 g honey | 100 g | honey |
☑ 2 limes | 2 piece | lime |
– 120 g mascarpone | 120 g | mascarpone |
· 80 g dextrose | 80 g | glucose |
1) 250 g water | 250 g | water |
2. 100 g honey | 100 g | honey |
200 g sugar* | 200 g | sucrose |
2 tbsp gin** | 2 tbsp | gin |
150 g honey † | 150 g | honey |
60 ml gin¹ | 60 ml | gin |
200 g sugar, | 200 g | sucrose |
200 g sugar; | 200 g | sucrose |
200 g sugar. | 200 g | sucrose |
)";

inline constexpr std::string_view roughLines = R"(
about 200 g sugar | 200 g | sucrose |
approx. 300 g rhubarb | 300 g | rhubarb |
~200 g sugar | 200 g | sucrose |
≈ 150 g honey | 150 g | honey |
ca. 100 g honey | 100 g | honey |
roughly 50 g hazelnuts | 50 g | hazelnut |
circa 1 kg pears | 1 kg | pear |
around 2 tbsp honey | 2 tbsp | honey |
just under 1 cup water | 1 cup | water |
a generous 2 tbsp honey | 2 tbsp | honey |
scant 1 cup sugar | 1 cup | sucrose |
1 scant cup whole milk | 1 cup | whole-milk |
1 heaped tsp cornflour | 1 tsp | cornstarch |
2 heaping tbsp cocoa powder | 2 tbsp | cocoa-powder |
1 rounded tablespoon honey | 1 tbsp | honey |
1 level tsp salt | 1 tsp | salt |
200 g (approx.) sugar | 200 g | sucrose |
Approximately 1 litre of water | 1 l | water |
)";

inline constexpr std::string_view rangeLines = R"(
3-4 bananas | 3.5 piece | banana | ~
1-2 tbsp rum | 1.5 tbsp | rum | ~
1 to 2 cups whole milk | 1.5 cup | whole-milk | ~
2–3 tbsp honey | 2.5 tbsp | honey | ~
150-200 g sugar | 175 g | sucrose | ~
1 or 2 limes | 1.5 piece | lime | ~
1/2 - 1 tsp salt | 0.75 tsp | salt | ~
½–1 tsp vanilla extract | 0.75 tsp | vanilla-extract | ~
pears 2-3 kg | 2.5 kg | pear | ~
1½ to 2 cups strawberries | 1.75 cup | strawberry | ~
100 to 120 ml gin | 110 ml | gin | ~
1,5-2 dl perry | 175 ml | perry | ~
about 2-3 tbsp gin | 2.5 tbsp | gin | ~
5–6 egg yolks | 5.5 piece | egg-yolk | ~
200g-250g sugar | 225 g | sucrose | ~
200 g to 250 g sugar | 225 g | sucrose | ~
between 2 and 3 tbsp honey | 2.5 tbsp | honey | ~
1-1½ cups water | 1.25 cup | water | ~
sugar 150–180 g | 165 g | sucrose | ~
from 50 to 60 g honey | 55 g | honey | ~
one or two bananas | 1.5 piece | banana | ~
)";

inline constexpr std::string_view sizeLines = R"(
1 (400 g) tin condensed milk | 400 g | sweetened-condensed-milk |
2 x 400 g tins coconut milk | 800 g | coconut-milk |
1 14-oz can sweetened condensed milk | 14 oz | sweetened-condensed-milk |
1 (14 oz) can condensed milk | 14 oz | sweetened-condensed-milk |
one 400 g tin coconut milk | 400 g | coconut-milk |
2 × 250 g tubs mascarpone | 500 g | mascarpone |
3 x 100g bars dark chocolate | 300 g | dark-chocolate-65 |
1 x 750 ml bottle perry | 750 ml | perry |
1 400-ml can coconut milk | 400 ml | coconut-milk |
2 (8-ounce) packages cream cheese | 16 oz | cream-cheese |
1 bottle (750 ml) perry | 750 ml | perry |
1 tin (397 g) condensed milk | 397 g | sweetened-condensed-milk |
2 tins (400 g each) coconut milk | 800 g | coconut-milk |
2 tins (400 g) coconut milk | | | !
1 tin coconut milk | | coconut-milk | -
250 g tub mascarpone | 250 g | mascarpone |
400 g tin of coconut milk | 400 g | coconut-milk |
half a 400 g tin coconut milk | 200 g | coconut-milk |
)";

inline constexpr std::string_view sumLines = R"(
½ cup + 1 tbsp sugar | 0.5625 cup | sucrose |
1 cup plus 2 tablespoons whole milk | 1.125 cup | whole-milk |
1 kg 200 g water | 1200 g | water |
1 lb 4 oz rhubarb | 1.25 lb | rhubarb |
2 cups and 2 tbsp water | 2.125 cup | water |
1 tbsp + 1 tsp cornflour | 4 tsp | cornstarch |
100 g + 50 g sugar | 150 g | sucrose |
1 l + 200 ml water | 1.2 l | water |
1 cup & 1 tbsp honey | 1.0625 cup | honey |
1 cup + 20 g sugar | | | !
1 and 1/2 cups sugar | 1.5 cup | sucrose |
1 & 1/2 cups whole milk | 1.5 cup | whole-milk |
1 cup less 1 tbsp sugar | | | !
2 cups + 3 lemons | | | !
)";

inline constexpr std::string_view partLines = R"(
zest of 1 lemon | 1 piece | lemon-zest |
juice of 2 limes | 2 piece | lime-juice |
Juice of half a lemon | 0.5 piece | lemon-juice |
juice of ½ lemon | 0.5 piece | lemon-juice |
1 lemon, juiced | 1 piece | lemon-juice |
2 limes, juiced | 2 piece | lime-juice |
1 lemon, zested | 1 piece | lemon-zest |
yolks of 4 eggs | 4 piece | egg-yolk |
whites of 2 eggs | 2 piece | egg-white |
4 eggs, yolks only | 4 piece | egg-yolk |
the juice of 3 oranges | 3 piece | orange-juice |
juice from 1 lemon | 1 piece | lemon-juice |
finely grated zest of 2 lemons | 2 piece | lemon-zest |
juice of a lemon | 1 piece | lemon-juice |
1 lemon, zest only | 1 piece | lemon-zest |
1 lemon (juice only) | 1 piece | lemon-juice |
Juice of 1 large lemon | 1 piece | lemon-juice |
freshly squeezed juice of 2 oranges | 2 piece | orange-juice |
grated rind of 1 lemon | 1 piece | lemon-zest |
juice of 1–2 limes | 1.5 piece | lime-juice | ~
)";

inline constexpr std::string_view vagueLines = R"(
a pinch of salt | 1 pinch | salt |
pinch of salt | 1 pinch | salt |
Pinch salt | 1 pinch | salt |
a good pinch of salt | 1 pinch | salt |
2 pinches of salt | 2 pinch | salt |
a dash of vodka | 1 dash | vodka |
1 shot of vodka | 1 shot | vodka |
a shot of vodka | 1 shot | vodka |
a handful of mint | | mint | -
a few mint leaves | | mint | -
salt, to taste | | salt | -
salt to taste | | salt | -
Salt (to taste) | | salt | -
a splash of gin | | gin | -
a drizzle of olive oil | | olive-oil | -
1 knob of butter | | unsalted-butter | -
some honey | | honey | -
a little lemon juice | | lemon-juice | -
2 sprigs mint | | mint | -
1 bunch of mint | | mint | -
mint leaves, to garnish | | mint | -
honey for drizzling | | honey | -
salt | | salt | -
lemon juice as needed | | lemon-juice | -
a squeeze of lemon juice | | lemon-juice | -
1 stick butter | 1 piece | unsalted-butter |
)";

inline constexpr std::string_view eitherLines = R"(
250 g (1 cup) whole milk | 250 g | whole-milk |
1 cup (250 g) whole milk | 250 g | whole-milk |
1 cup (240 ml) water | 240 ml | water |
200g/7oz sugar | 200 g | sucrose |
200 g / 7 oz sugar | 200 g | sucrose |
100 g sugar (½ cup) | 100 g | sucrose |
8 oz (225 g) strawberries | 225 g | strawberry |
2 tbsp (30 ml) gin | 30 ml | gin |
4 egg yolks (72 g) | 72 g | egg-yolk |
500ml/17fl oz double cream | 500 ml | double-cream |
¾ cup (150 g / 5.3 oz) sugar | 150 g | sucrose |
1 cup [240 ml] water | 240 ml | water |
225 g or 8 oz rhubarb | 225 g | rhubarb |
250 ml (or 1 cup) whole milk | 250 ml | whole-milk |
250 g butter (cold) | 250 g | unsalted-butter |
200 g (7 oz.) sugar | 200 g | sucrose |
)";

inline constexpr std::string_view notedLines = R"(
200 g strawberries, hulled and halved | 200 g | strawberry |
100 g butter, softened | 100 g | unsalted-butter |
2 eggs, beaten | 2 piece | egg |
250 g rhubarb, cut into short pieces | 250 g | rhubarb |
500 ml cold water | 500 ml | water |
2 tbsp freshly squeezed lemon juice | 2 tbsp | lemon-juice |
1 vanilla pod, split and scraped | 1 piece | vanilla-pod |
100 g sugar, plus extra for dusting | 100 g | sucrose |
120 g honey (optional) | 120 g | honey |
200 g sugar (see note) | 200 g | sucrose |
250 g, water | 250 g | water |
1 tsp salt, or to taste | 1 tsp | salt |
)";

inline constexpr std::string_view unreadableLines = R"(
-250 g sugar | | | !
-5 g | | | !
1,000 g water | | | !
12,500 g water | | | !
1 000 g water | | | !
1.000,5 g water | | | !
1/0 cup sugar | | | !
1e308 g water | | | !
salt -5 g | | | !
)";

/// ⇥ stands for a tab.
inline constexpr std::string_view columnLines = R"(
200 g⇥sugar | 200 g | sucrose |
sugar⇥200 g | 200 g | sucrose |
sugar⇥200⇥g | 200 g | sucrose |
200⇥g⇥sugar | 200 g | sucrose |
water⇥250⇥ml⇥cold | 250 ml | water |
☐⇥250⇥g⇥water | 250 g | water |
lemons⇥2-3 | 2.5 piece | lemon | ~
1-2⇥tbsp⇥rum | 1.5 tbsp | rum | ~
salt⇥to taste | | salt | -
honey⇥½ cup + 1 tbsp | 0.5625 cup | honey |
)";

}  // namespace firn
