// SPDX-License-Identifier: MIT
#include "session/recents.h"

#include <QSettings>

namespace tripoise::recents {
namespace {

const QString key = QStringLiteral("recents");

} // namespace

QStringList all()
{
    return QSettings().value(key).toStringList().mid(0, most);
}

void remember(const QString& path)
{
    QStringList paths = all();
    paths.removeAll(path);
    paths.prepend(path);
    QSettings().setValue(key, paths.mid(0, most));
}

} // namespace tripoise::recents
