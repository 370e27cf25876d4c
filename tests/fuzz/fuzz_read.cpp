// SPDX-License-Identifier: MIT
//
// Any bytes are read or refused without harm, and what is read survives a rewrite unchanged, be it
// whole or still being filled in.
#include "document/lacks.h"
#include "document/read.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace {

std::string textOf(const char* path)
{
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

const tripoise::Tables& tables()
{
    static const tripoise::Tables loaded = [] {
        const std::string anthropometry = textOf(TRIPOISE_ASSETS "/anthropometry.json");
        const std::string tape = textOf(TRIPOISE_ASSETS "/tape.json");
        const std::string body = textOf(TRIPOISE_ASSETS "/body.json");
        const std::string comfort = textOf(TRIPOISE_ASSETS "/comfort.json");
        const std::string parts = textOf(TRIPOISE_ASSETS "/parts.json");
        const std::string weights = textOf(TRIPOISE_ASSETS "/weights.json");
        const std::string segments = textOf(TRIPOISE_ASSETS "/segments.json");
        const std::string handling = textOf(TRIPOISE_ASSETS "/handling.json");
        auto read = tripoise::readTables(
            {anthropometry, tape, body, comfort, parts, weights, segments, handling});
        if (!std::holds_alternative<tripoise::Tables>(read)) {
            std::fputs("constant tables cannot be read\n", stderr);
            std::abort();
        }
        return std::get<tripoise::Tables>(std::move(read));
    }();
    return loaded;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto draftRead = tripoise::readDraft(text, tables());
    const auto read = tripoise::readFitting(text, tables());
    const auto* draft = std::get_if<tripoise::Fitting>(&draftRead);
    const auto* fitting = std::get_if<tripoise::Fitting>(&read);
    if (!fitting && std::get<tripoise::Problems>(read).empty())
        std::abort(); // refused without a reason
    if (fitting && !(draft && *draft == *fitting))
        std::abort(); // whole, and yet no draft
    if (!draft)
        return 0;
    const std::string written = tripoise::writeFitting(*draft);
    const auto again = tripoise::readDraft(written, tables());
    const auto* rewritten = std::get_if<tripoise::Fitting>(&again);
    if (!rewritten || !(*rewritten == *draft))
        std::abort();
    if (fitting
        && !std::holds_alternative<tripoise::Fitting>(tripoise::readFitting(written, tables())))
        std::abort();
    (void)tripoise::lacks(*draft, tables());
    return 0;
}
