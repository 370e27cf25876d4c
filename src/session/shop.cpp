// SPDX-License-Identifier: MIT
#include "session/shop.h"

#include "document/read.h"
#include "shipped/tables.h"
#include <QDir>
#include <QFile>

#include <algorithm>

namespace tripoise::shop {
namespace {

QString pathOf(const char* name)
{
    return QDir(store::folder()).filePath(QLatin1String(name));
}

using State = store::Saved::State;

constexpr auto boxName = "box.json";
constexpr auto framesName = "frames.json";

QByteArray textOf(const Fitting& fitting)
{
    return QByteArray::fromStdString(writeFitting(fitting));
}

/// Nothing where it cannot be read; a damaged one is set aside, to be found.
std::optional<Fitting> kept(const QString& path, const QByteArray& bytes)
{
    auto read = readDraft({bytes.constData(), std::size_t(bytes.size())}, shippedTables());
    if (auto* fitting = std::get_if<Fitting>(&read))
        return std::move(*fitting);
    if (!bytes.isEmpty())
        (void)store::setAside(path, bytes);
    return std::nullopt;
}

Fitting startingBox()
{
    QFile file(QStringLiteral(":/assets/starting_box.json"));
    const QByteArray bytes = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    return kept(file.fileName(), bytes).value_or(Fitting());
}

} // namespace

Fitting box(KnownBox& known)
{
    const QString path = pathOf(boxName);
    const QByteArray bytes = store::read(path).bytes;
    if (bytes != known.bytes)
        known = {bytes, false};
    auto own = kept(path, bytes);
    return own ? std::move(*own) : startingBox();
}

Saving rememberBox(const Stock& box, KnownBox& known)
{
    Fitting fitting;
    fitting.stock = box;
    const QString path = pathOf(boxName);
    const QByteArray text = textOf(fitting);
    const store::Saved saved = store::save(path, text, store::overOwn(known.bytes, !known.written));
    if (saved.state != State::Done)
        return {saved.state, Saving::tr("The shop's box of parts was not kept: %1.").arg(saved.why),
                true};
    known = {text, true};
    if (!saved.foreign)
        return {State::Done, {}, false};
    return {State::Done,
            Saving::tr("Another window had changed the shop's box of parts; what it held is kept "
                       "in %1.")
                .arg(store::historyOf(path)),
            false};
}

Fitting frames()
{
    const QString path = pathOf(framesName);
    return framesOf(kept(path, store::read(path).bytes).value_or(Fitting()));
}

void rememberFrames(const Fitting& fitting)
{
    if (fitting.frames.empty())
        return;
    const store::Saved saved =
        store::save(pathOf(framesName), textOf(framesOf(fitting)), store::overOwn());
    if (saved.state != State::Done)
        qWarning("%s could not be kept: %s", framesName, qPrintable(saved.why));
}

Fitting framesOf(const Fitting& fitting)
{
    Fitting result;
    result.frames = fitting.frames;
    result.bicycle = fitting.bicycle;
    result.bicycle.barKind.reset(); // asked of each
    result.bicycle.crankMm.reset();
    std::vector<KeptJson> kept = fitting.kept.all();
    std::erase_if(kept, [](const KeptJson& piece) { return !piece.path.starts_with("/frames/"); });
    result.kept = std::move(kept);
    return result;
}

} // namespace tripoise::shop
