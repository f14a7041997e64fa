#include "usual_catalogue.h"

#include "exchange/catalogue_json.h"
#include "exchange/files.h"

namespace firn {

const Catalogue& usualCatalogue()
{
    static const Catalogue catalogue =
        catalogueFromJson(contentsOf(std::filesystem::path(FIRN_SOURCE_DIR "/resources/catalogue.json")).value()).value();
    return catalogue;
}

}  // namespace firn
