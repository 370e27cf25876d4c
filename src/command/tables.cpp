// SPDX-License-Identifier: MIT
#include "command/tables.h"

#include "document/read.h"
#include "wording/problems.h"

#include <QFile>

#include <array>

namespace tripoise {
namespace {

std::string resource(const char* name)
{
    QFile file(QStringLiteral(":/assets/%1.json").arg(QLatin1String(name)));
    if (!file.open(QIODevice::ReadOnly))
        qFatal("constant table %s is missing from the program", name);
    return file.readAll().toStdString();
}

Tables readShipped()
{
    const std::array texts{resource("anthropometry"), resource("tape"),    resource("body"),
                           resource("comfort"),       resource("parts"),   resource("weights"),
                           resource("segments"),      resource("handling")};
    auto read = readTables(
        {texts[0], texts[1], texts[2], texts[3], texts[4], texts[5], texts[6], texts[7]});
    if (const auto* problems = std::get_if<Problems>(&read))
        qFatal("%s", qPrintable(sentence(problems->front())));
    return std::get<Tables>(std::move(read));
}

} // namespace

const Tables& shippedTables()
{
    static const Tables tables = readShipped();
    return tables;
}

} // namespace tripoise
