// SPDX-License-Identifier: MIT
//
// What a rider complains of on today's bicycle, and what the advice does about it.
#pragma once

#include "base/complaint.h"
#include "base/finding.h"

#include <QString>

#include <string>
#include <vector>

namespace tripoise {

[[nodiscard]] QString nameOf(Complaint complaint);
/// Complaints of a document in its own words; nothing is made of them.
[[nodiscard]] QString inOwnWords(const std::vector<std::string>& complaints);
/// Of FindingCode::Complained.
[[nodiscard]] QString complaintSentence(const Finding& finding);

} // namespace tripoise
