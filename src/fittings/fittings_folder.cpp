// SPDX-License-Identifier: MIT
#include "fittings/fittings_folder.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSettings>
#include <QStandardPaths>

namespace tripoise::fittings {
namespace {

const QString key = QStringLiteral("fittings_folder");
const QString dateFormat = QStringLiteral("yyyy-MM-dd");
constexpr qsizetype longestStem = 50; // in any letters within what file systems take

QString cleaned(const QString& path)
{
    const QString canonical = QFileInfo(path).canonicalFilePath();
    return canonical.isEmpty() ? QDir::cleanPath(path) : canonical;
}

QString readable(const std::string& rider)
{
    QString name = QString::fromStdString(rider).toLower().left(longestStem);
    for (QChar& c : name)
        if (!c.isLetterOrNumber())
            c = QLatin1Char(' ');
    return name.simplified().replace(QLatin1Char(' '), QLatin1Char('-'));
}

} // namespace

QString ordinaryFolder()
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
        .filePath(QStringLiteral("Tripoise"));
}

QString folder()
{
    const QString chosen = QSettings().value(key).toString();
    return chosen.isEmpty() ? ordinaryFolder() : chosen;
}

void setFolder(const QString& folder)
{
    QSettings().setValue(key, folder);
}

void makeFolder(const QString& folder)
{
    if (folder == ordinaryFolder())
        QDir().mkpath(folder);
}

bool isIn(const QString& path)
{
    return !path.isEmpty() && cleaned(QFileInfo(path).absolutePath()) == cleaned(folder());
}

QString FileNames::stemFor(const std::string& rider, const QDate& date)
{
    const QString name = readable(rider);
    return QStringLiteral("%1-%2").arg(name.isEmpty() ? tr("fitting", "name of a file") : name,
                                       date.toString(dateFormat));
}

std::optional<QString> FileNames::renewed(const QString& path, const std::string& before,
                                          const std::string& rider)
{
    static const QRegularExpression ours(QStringLiteral(R"(^(.+-(\d{4}-\d{2}-\d{2}))(?:-\d+)?$)"));
    const auto match = ours.match(QFileInfo(path).completeBaseName());
    const QDate date = QDate::fromString(match.captured(2), dateFormat);
    const QString stem = stemFor(rider, date);
    return match.captured(1) == stemFor(before, date) && match.captured(1) != stem
                   && !readable(rider).isEmpty()
               ? std::optional(stem)
               : std::nullopt;
}

QString FileNames::path(const QString& folder, const QString& stem, int number)
{
    return QDir(folder).filePath(number < 2 ? QStringLiteral("%1.json").arg(stem)
                                            : QStringLiteral("%1-%2.json").arg(stem).arg(number));
}

} // namespace tripoise::fittings
