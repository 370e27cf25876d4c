// SPDX-License-Identifier: MIT
#include "document/put_back.h"

#include <charconv>

namespace tripoise::document {
namespace {

/// The key or index between two slashes of a JSON pointer, as it was.
std::string unescaped(std::string_view token)
{
    std::string key;
    for (std::size_t i = 0; i < token.size(); ++i) {
        if (token[i] == '~' && i + 1 < token.size())
            key += token[++i] == '0' ? '~' : '/';
        else
            key += token[i];
    }
    return key;
}

/// The member or entry one step down a pointer. An object that was left out because it was empty
/// comes back; a frame, a mudguard, a ridden bicycle, a trial or a choice that is gone does not.
Json* stepInto(Json& json, const std::string& key)
{
    if (json.is_array()) {
        std::size_t index = 0;
        const auto [end, error] = std::from_chars(key.data(), key.data() + key.size(), index);
        const bool whole = error == std::errc() && end == key.data() + key.size();
        return whole && index < json.size() ? &json[index] : nullptr;
    }
    if (!json.is_object())
        return nullptr;
    if (const auto found = json.find(key); found != json.end())
        return &*found;
    if (key == "current" || key == "mudguard" || key == "trial" || key == "setup" || key == "size")
        return nullptr;
    return &(json[key] = Json::object());
}

} // namespace

void putBack(Json& root, const KeptJson& piece)
{
    auto parsed = parseJson(piece.text);
    auto* value = std::get_if<Json>(&parsed);
    if (!value || piece.path.empty())
        return;
    Json* place = &root;
    std::string_view rest = std::string_view(piece.path).substr(1);
    for (auto slash = rest.find('/'); slash != std::string_view::npos; slash = rest.find('/')) {
        place = stepInto(*place, unescaped(rest.substr(0, slash)));
        if (!place)
            return;
        rest.remove_prefix(slash + 1);
    }
    if (!place->is_object())
        return;
    // Kept keys are unknown ones, so the key is new here. Appending does not look for it, which
    // would take a time that grows with the square of their number.
    auto& members = place->get_ref<Json::object_t&>();
    static_cast<Json::object_t::Container&>(members).emplace_back(unescaped(rest),
                                                                  std::move(*value));
}

} // namespace tripoise::document
