// SPDX-License-Identifier: MIT
//
// The head of a document: which kind it is, and of which version.
#pragma once

#include "document/fields.h"

namespace tripoise::document {

enum class Head {
    Readable, ///< of this kind and a known version, or it is reported that this is not said
    Newer,    ///< of a version that may follow other rules
    Other,    ///< another kind of document
};

/// Reports what is wrong with `format` and `version`.
[[nodiscard]] Head readHead(Fields& root, std::string_view format, int newestVersion);

} // namespace tripoise::document
