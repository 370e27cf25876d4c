// SPDX-License-Identifier: MIT
#include "session/saving.h"

#include "document/read.h"
#include "shipped/tables.h"
#include "wording/problems.h"

#include <QFileInfo>

namespace tripoise {
namespace {

using State = store::Saved::State;

constexpr qsizetype longestFileName = 60; // in any letters within what file systems take

QString whyNotSaved(State state, const QString& name, const QString& why)
{
    switch (state) {
    case State::Done: return {};
    case State::Taken: return Saving::tr("%1 is there already and was not replaced.").arg(name);
    case State::NotKept:
        return Saving::tr("%1 was not saved: a copy of what stands there cannot be kept (%2). "
                          "Everything is still here; save it under another name.")
            .arg(name, why);
    case State::Failed: break;
    }
    return Saving::tr("%1 was not saved: %2. Everything is still here; save it under another name.")
        .arg(name, why);
}

} // namespace

SavedFitting writeAndRead(const QString& path, const QByteArray& text, const store::Over& over)
{
    SavedFitting saved{store::save(path, text, over), {}};
    if (saved.file.state != State::Done)
        return saved;
    auto read = readDraft({text.constData(), std::size_t(text.size())}, shippedTables());
    if (auto* problems = std::get_if<Problems>(&read))
        saved.refused = std::move(*problems);
    return saved;
}

Saving told(const QString& path, const SavedFitting& outcome, const store::Over& over)
{
    const QString name = QFileInfo(path).fileName();
    const store::Saved& saved = outcome.file;
    Saving saving{saved.state, whyNotSaved(saved.state, name, saved.why), true};
    if (saved.state != State::Done)
        return saving;
    QStringList wrong;
    if (!saved.why.isEmpty())
        wrong << Saving::tr("%1 was saved, but it is not sure that it has reached the disk (%2). "
                            "Save it in another place too.")
                     .arg(name, saved.why);
    if (!outcome.refused.empty())
        wrong << Saving::tr("%1 was saved, but it cannot be opened again as it is: %2")
                     .arg(name, sentence(outcome.refused.front()));
    QStringList notes;
    if (saved.foreign)
        notes << (over.known.isEmpty()
                      ? Saving::tr("Saved. What %1 held before is kept in %2.")
                      : Saving::tr("Saved. Another program had changed %1 meanwhile; what it wrote "
                                   "is kept in %2."))
                     .arg(name, store::historyOf(path));
    if (saved.severalNames)
        notes << Saving::tr("Saved as a new file: %1 was one file under several names, and the "
                            "others keep what it held.")
                     .arg(name);
    if (saved.tooOpen)
        notes << Saving::tr("Others can read %1: its disk knows no permissions.").arg(name);
    saving.told = (wrong + notes).join(QLatin1Char('\n'));
    saving.wrong = !wrong.isEmpty();
    return saving;
}

store::Over copyOver(const QString& from, bool replace)
{
    store::Over over;
    over.anything = replace;
    if (const auto found = whole_file::find(from); found.any)
        over.access.most &= found.mode | whole_file::ownAccess.most;
    return over;
}

QString fileNameFor(const QString& rider)
{
    QString name = rider.toLower().left(longestFileName);
    for (QChar& c : name)
        if (!c.isLetterOrNumber())
            c = QLatin1Char('-');
    return name + QStringLiteral(".json");
}

} // namespace tripoise
