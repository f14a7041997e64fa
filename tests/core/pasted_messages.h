// Whole messages as people paste them, with what they say: the title, and a row a line as component | amount | ingredient | mark (as in
// pasted_lines.h). The kitchens and people are those of an invented bistro by a canal.
#pragma once

#include <array>
#include <string_view>

namespace firn {

struct PastedMessage {
    std::string_view text;
    std::string_view title;
    std::string_view rows;
};

inline constexpr std::array pastedMessages{
    PastedMessage{R"(Rhubarb and hibiscus granita
300 g rhubarb, in short pieces
190 g sugar
500 ml water
2 tbsp lemon juice
a pinch of salt)",
        "Rhubarb and hibiscus granita",
        R"(
| 300 g | rhubarb |
| 190 g | sucrose |
| 500 ml | water |
| 2 tbsp | lemon-juice |
| 1 pinch | salt |)"},

    PastedMessage{R"(Hi Mira,

here is the granita that we made for the lock party. It serves eight.

Rhubarb granita

Ingredients:
- 300 g rhubarb
- 150-180 g sugar
- 500 ml water
- juice of 1 lemon

Method:
1. Boil the water and sugar until clear.
2. Add the rhubarb and cook for 10 minutes, then strain.
3. Freeze in a shallow pan and scrape every 30 minutes.

Best wishes,
Odo)",
        "Rhubarb granita",
        R"(
| 300 g | rhubarb |
| 165 g | sucrose | ~
| 500 ml | water |
| 1 piece | lemon-juice |)"},

    PastedMessage{R"(## Pear and perry sorbet

For the syrup:
200 g sugar
60 g glucose syrup
200 ml water

For the fruit:
1 kg ripe pears
250 ml perry
2 tbsp lemon juice

Instructions
Bring the syrup to the boil. Leave to cool.
Blend the pears with the perry and lemon juice.
Churn.)",
        "Pear and perry sorbet",
        R"(
syrup | 200 g | sucrose |
syrup | 60 g | glucose-syrup-42 |
syrup | 200 ml | water |
fruit | 1 kg | pear |
fruit | 250 ml | perry |
fruit | 2 tbsp | lemon-juice |)"},

    PastedMessage{R"(TOASTED BUCKWHEAT ICE CREAM

Yield: about 1 litre
Prep time: 20 minutes

2 cups heavy whipping cream
1 cup whole milk
¾ cup (150 g) granulated sugar
6 large egg yolks
½ cup toasted buckwheat
¼ tsp salt
1 teaspoon vanilla extract (optional)

Directions

Toast the buckwheat in a dry pan for 5 minutes.
Steep it in the milk and cream for 1 hour, then strain.
Whisk yolks and sugar, temper with the warm cream, and cook to 82 °C.
Chill overnight and churn.)",
        "TOASTED BUCKWHEAT ICE CREAM",
        R"(
| 2 cup | heavy-cream |
| 1 cup | whole-milk |
| 150 g | sucrose |
| 6 piece | egg-yolk |
| 0.5 cup | toasted-buckwheat |
| 0.25 tsp | salt |
| 1 tsp | vanilla-extract |)"},

    PastedMessage{R"(Cucumber & gin ice
cucumber 500 g
sugar syrup 1:1 150 g
gin 60 ml
limes 2, juiced
salt, to taste)",
        "Cucumber & gin ice",
        R"(
| 500 g | cucumber |
| 150 g | sugar-syrup-1-1 |
| 60 ml | gin |
| 2 piece | lime-juice |
| | salt | -)"},

    PastedMessage{R"(Haselnuss-Semifreddo

0,25 l whipping cream
4 egg yolks
75,5 g sugar
1,5 dl whole milk
80 g hazelnut paste

Preparation
Whip the cream. Beat the yolks with the sugar over steam.
Fold together and freeze overnight.)",
        "Haselnuss-Semifreddo",
        R"(
| 0.25 l | cream-35 |
| 4 piece | egg-yolk |
| 75.5 g | sucrose |
| 150 ml | whole-milk |
| 80 g | hazelnut-paste |)"},

    PastedMessage{R"(Subject: sherbet for Thursday
From: Ines
To: kitchen

Lime and buttermilk sherbet

1 quart buttermilk
1 cup plus 2 tablespoons sugar
zest of 2 limes
½ cup lime juice
2-3 tbsp honey
1 shot vodka

Stir everything until the sugar has dissolved, chill and churn.

See you on Thursday!)",
        "Lime and buttermilk sherbet",
        R"(
| 1 qt | buttermilk |
| 1.125 cup | sucrose |
| 2 piece | lime-zest |
| 0.5 cup | lime-juice |
| 2.5 tbsp | honey | ~
| 1 shot | vodka |)"},

    PastedMessage{R"(Olive oil ice cream (from the blue notebook)

Base
500 ml whole milk
250 ml double cream
5 egg yolks
150 g sugar

To finish
100 ml olive oil
1 tsp salt

1. Warm the milk and cream to 60 °C.
2. Whisk the yolks with the sugar; pour on the milk.
3. Cook to 82 °C, strain and chill.
4. Whisk in the oil and churn.)",
        "Olive oil ice cream (from the blue notebook)",
        R"(
Base | 500 ml | whole-milk |
Base | 250 ml | double-cream |
Base | 5 piece | egg-yolk |
Base | 150 g | sucrose |
To finish | 100 ml | olive-oil |
To finish | 1 tsp | salt |)"},

    PastedMessage{R"(Coffee granita

☐ 500 ml brewed coffee
☐ 100 g sugar
☐ 2 tbsp (30 ml) coffee liqueur
☐ 1,000 ml water

Notes:
Scrape it as soon as the edges are set.
Keeps for 2 days.)",
        "Coffee granita",
        R"(
| 500 ml | coffee |
| 100 g | sucrose |
| 30 ml | coffee-liqueur |
| | | !)"},

    PastedMessage{R"(COUPE "TOWPATH"

ICE:
Whole milk.....500 g
Heavy cream....200 g
Sugar..........130 g
Skim milk powder...35 g

CREAM:
Heavy cream....150 g
Icing sugar.....15 g

CRUMBLE:
Butter.........100 g
Flour..........100 g
Sugar..........100 g
Ground almonds.100 g)",
        "COUPE \"TOWPATH\"",
        R"(
ICE | 500 g | whole-milk |
ICE | 200 g | heavy-cream |
ICE | 130 g | sucrose |
ICE | 35 g | skim-milk-powder |
CREAM | 150 g | heavy-cream |
CREAM | 15 g | icing-sugar |
CRUMBLE | 100 g | unsalted-butter |
CRUMBLE | 100 g | wheat-flour |
CRUMBLE | 100 g | sucrose |
CRUMBLE | 100 g | ground-almond |)"},

    PastedMessage{R"(Coconut sherbet

2 x 400 ml tins coconut milk
200g/7oz caster sugar
juice of 2 limes
1 tbsp rum
pinch of salt

STEP 1
Heat the coconut milk with the sugar, stirring, until it has dissolved.

STEP 2
Add the lime juice, rum and salt, then cool. Churn.)",
        "Coconut sherbet",
        R"(
| 800 ml | coconut-milk |
| 200 g | sucrose |
| 2 piece | lime-juice |
| 1 tbsp | rum |
| 1 pinch | salt |)"},

    PastedMessage{R"(Sorbet poire et cidre de poire

pears	1,2	kg
sugar	180	g
perry	2,5	dl
lemon juice	30	g

Cook the pears. Blend. Churn.)",
        "Sorbet poire et cidre de poire",
        R"(
| 1.2 kg | pear |
| 180 g | sucrose |
| 250 ml | perry |
| 30 g | lemon-juice |)"},

    PastedMessage{R"(Buttermilk cream:
300 ml buttermilk
200 g double cream
40 g icing sugar

Whip the cream with the sugar and fold in the buttermilk. Serve at once.)",
        "Buttermilk cream",
        R"(
| 300 ml | buttermilk |
| 200 g | double-cream |
| 40 g | icing-sugar |)"},

    PastedMessage{R"(Strawberry ice (grandmother's)
- 2 lb strawberries
- 1 lb 4 oz sugar
- the juice of 2 lemons
- 1 pt water
- 1 wineglass of kirsch

Crush the berries with half of the sugar & leave for an hour.
Boil the rest of the sugar with the water for 5 minutes.
When cold mix all together, and freeze.)",
        "Strawberry ice (grandmother's)",
        R"(
| 2 lb | strawberry |
| 1.25 lb | sucrose |
| 2 piece | lemon-juice |
| 1 pt | water |
| | fruit-brandy | -)"},

    PastedMessage{R"(Chocolate granita
Serves 6

100 g dark chocolate (70%), chopped
80–100 g sugar
700 ml water
25 g cocoa powder
1 tsp vanilla extract
a few mint leaves, to serve

Method
Bring water, sugar and cocoa to the boil. Pour over the chocolate. Stir until smooth, cool and freeze, scraping every half hour.)",
        "Chocolate granita",
        R"(
| 100 g | dark-chocolate-75 |
| 90 g | sucrose | ~
| 700 ml | water |
| 25 g | cocoa-powder |
| 1 tsp | vanilla-extract |
| | mint | -)"},
};

}  // namespace firn
