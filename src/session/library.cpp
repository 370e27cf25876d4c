// SPDX-License-Identifier: MIT
#include "session/library.h"

#include "document/read.h"
#include "session/store.h"

#include <QCryptographicHash>
#include <QDir>

#include <algorithm>

namespace tripoise::library {
namespace {

QString folder()
{
    return store::folder(QStringLiteral("frames"));
}

/// A name that a file can have, and no other model's.
QString pathOf(const std::string& model)
{
    const QByteArray name = QByteArray::fromStdString(model);
    QString readable = QString::fromUtf8(name).toLower().left(40);
    for (QChar& c : readable)
        if (!c.isLetterOrNumber())
            c = u'-';
    const QByteArray hash = QCryptographicHash::hash(name, QCryptographicHash::Sha1).toHex();
    return QDir(folder()).filePath(
        QStringLiteral("%1-%2.json").arg(readable, QLatin1String(hash.left(8))));
}

std::optional<KeptFrame> kept(const QString& path)
{
    const QByteArray bytes = store::read(path).bytes;
    auto read = readFrameModel({bytes.constData(), std::size_t(bytes.size())});
    auto* sizes = std::get_if<std::vector<FrameSize>>(&read);
    if (!sizes || sizes->empty())
        return std::nullopt;
    std::string model = sizes->front().model;
    return KeptFrame{std::move(model), path, std::move(*sizes)};
}

} // namespace

std::vector<KeptFrame> all()
{
    std::vector<KeptFrame> frames;
    const QDir own(folder());
    for (const QString& name : own.entryList({QStringLiteral("*.json")}, QDir::Files))
        if (auto frame = kept(own.filePath(name)))
            frames.push_back(std::move(*frame));
    std::sort(frames.begin(), frames.end(), [](const KeptFrame& one, const KeptFrame& other) {
        return QString::localeAwareCompare(QString::fromStdString(one.model),
                                           QString::fromStdString(other.model))
               < 0;
    });
    return frames;
}

std::optional<QString> keep(const std::string& model, std::vector<FrameSize> sizes)
{
    const QString path = pathOf(model);
    for (FrameSize& size : sizes)
        size.model = model;
    if (const auto before = kept(path))
        for (const FrameSize& old : before->sizes)
            if (std::none_of(sizes.begin(), sizes.end(),
                             [&](const FrameSize& size) { return size.size == old.size; }))
                sizes.push_back(old);
    const store::Saved saved = store::save(
        path, QByteArray::fromStdString(writeFrameModel(model, sizes)), store::overOwn());
    return saved.why.isEmpty() ? std::nullopt : std::optional(saved.why);
}

std::optional<QString> forget(const QString& path)
{
    if (const auto failure = store::keepHistory(path))
        return failure;
    QFile file(path);
    return file.remove() ? std::nullopt : std::optional(file.errorString());
}

} // namespace tripoise::library
