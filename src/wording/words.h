// SPDX-License-Identifier: MIT
//
// Names as they are said. All sentences of the program are made in this folder.
//
// A sentence is translated whole, with places for what varies; what is put in is a number with its
// unit, a name, or a list of alike phrases. No article, ending or word order of English is glued on
// outside of it.
#pragma once

#include "advice/advise.h"
#include "wording/speech.h"

#include <QCoreApplication>
#include <QString>

namespace tripoise {

/// Translation context of every sentence.
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

[[nodiscard]] QString listed(const QStringList& items); ///< "a, b and c"
/// The same text, broken over lines between words only: never between a figure and its unit, nor
/// between the two figures of a range.
[[nodiscard]] QString unbroken(QString text);

/// "a 80 mm stem" becomes "an 80 mm stem"; other languages have no such words.
[[nodiscard]] QString articled(QString sentence);

[[nodiscard]] QString nameOf(Use use);
[[nodiscard]] QString nameOf(const Mix& mix); ///< "70 % fast commuting, 30 % touring"
[[nodiscard]] QString nameOf(Quantity quantity);
[[nodiscard]] QString geometryName(const std::string& key);

/// Where in a sentence a name stands; languages differ in what that does to it.
enum class Place { Opening, Within };

/// "the M", or "the Millrace M" where the candidates are of more than one model.
[[nodiscard]] QString sizeName(const FrameSize& frame, const Prepared& prepared,
                               Place place = Place::Within);
[[nodiscard]] inline QString sizeName(const Candidate& candidate, const Prepared& prepared,
                                      Place place = Place::Within)
{
    return sizeName(prepared.sizes[candidate.size].frame, prepared, place);
}
/// "M", or "Millrace M": on a label, outside of sentences.
[[nodiscard]] QString sizeLabel(const FrameSize& frame, const Prepared& prepared);

[[nodiscard]] QString stemName(const Stem& mounted, bool flipped); ///< "100 mm, −6°, flipped"
[[nodiscard]] QString barName(const Bar& bar);

} // namespace tripoise
