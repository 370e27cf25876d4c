// SPDX-License-Identifier: MIT
//
// The fields that no common kind of row describes (document/row_kinds.h): measurements, the mix,
// the weights' factors, a set-up that was pulled about or chosen.
#pragma once

#include "document/fields.h"

namespace tripoise::document {

void readMeasurements(Fields& rider, Rider& to, Kept& kept);
void writeMeasurements(const Rider& rider, Json& json);
void checkMeasurements(const Rider& rider, const std::string& path, Report& report);
[[nodiscard]] Json measurementsSchema(const TapeTable& tape);

void readMix(Fields& riding, Riding& to, Kept& kept);
void writeMix(const Riding& riding, Json& json);
void checkMix(const Riding& riding, const std::string& path, Report& report);
[[nodiscard]] Json mixSchema(const TapeTable& tape);

void readFactors(Fields& choices, Choices& to, Kept& kept);
void writeFactors(const Choices& choices, Json& json);
void checkFactors(const Choices& choices, const std::string& path, Report& report);
[[nodiscard]] Json factorsSchema(const TapeTable& tape);

// One of the two stands in a document: `setup` was chosen by the builder.
void readTrial(Fields& choices, Choices& to, Kept& kept);
void writeTrial(const Choices& choices, Json& json);
void checkTrial(const Choices& choices, const std::string& path, Report& report);
void readOwnSetup(Fields& choices, Choices& to, Kept& kept);
void writeOwnSetup(const Choices& choices, Json& json);
void checkOwnSetup(const Choices& choices, const std::string& path, Report& report);
[[nodiscard]] Json trialSchema(const TapeTable& tape);

} // namespace tripoise::document
