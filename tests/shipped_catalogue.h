// The catalogue that Firn ships, read once for all tests of a program.
#pragma once

#include "exchange/catalogue_json.h"

#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <string>

namespace firn {

inline std::string shippedCatalogueText()
{
    std::ifstream file(FIRN_SOURCE_DIR "/resources/catalogue.json");
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

/// An empty catalogue, and a failed test, if it cannot be read.
inline const Catalogue& shippedCatalogue()
{
    static const Catalogue catalogue = [] {
        auto read = catalogueFromJson(shippedCatalogueText());
        EXPECT_TRUE(read.has_value()) << english(read.error());
        return read ? *read : Catalogue{};
    }();
    return catalogue;
}

}  // namespace firn
