// SPDX-License-Identifier: MIT
#include "session/shop.h"

#include "command/tables.h"
#include "document/read.h"
#include "session/store.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace tripoise::shop {
namespace {

QString pathOf(const char* name)
{
    return QDir(store::folder()).filePath(QLatin1String(name));
}

constexpr auto boxName = "box.json";
constexpr auto framesName = "frames.json";

/// Nothing where it cannot be read; a damaged one is set aside before it is written over.
std::optional<Fitting> kept(const QString& path)
{
    const QByteArray bytes = store::read(path).bytes;
    auto read = readDraft({bytes.constData(), std::size_t(bytes.size())}, shippedTables());
    if (auto* fitting = std::get_if<Fitting>(&read))
        return std::move(*fitting);
    if (!bytes.isEmpty())
        (void)store::setAside(path);
    return std::nullopt;
}

void keep(const char* name, const Fitting& fitting)
{
    if (const auto failure =
            store::write(pathOf(name), QByteArray::fromStdString(writeFitting(fitting))))
        qWarning("%s could not be kept: %s", name, qPrintable(*failure));
}

} // namespace

Stock box()
{
    if (const auto own = kept(pathOf(boxName)))
        return own->stock;
    return kept(QStringLiteral(":/assets/starting_box.json")).value_or(Fitting()).stock;
}

void rememberBox(const Stock& box)
{
    Fitting fitting;
    fitting.stock = box;
    keep(boxName, fitting);
}

Fitting frames()
{
    return framesOf(kept(pathOf(framesName)).value_or(Fitting()));
}

void rememberFrames(const Fitting& fitting)
{
    if (!fitting.frames.empty())
        keep(framesName, framesOf(fitting));
}

Fitting framesOf(const Fitting& fitting)
{
    Fitting result;
    result.frames = fitting.frames;
    std::copy_if(fitting.kept.begin(), fitting.kept.end(), std::back_inserter(result.kept),
                 [](const KeptJson& piece) { return piece.path.starts_with("/frames/"); });
    return result;
}

} // namespace tripoise::shop
