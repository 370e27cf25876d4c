// SPDX-License-Identifier: MIT
#include "shipped/tables.h"

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

/// What was read, or the end: that the files can be read is tested.
template <typename Value> Value sound(std::variant<Value, Problems> read)
{
    if (const auto* problems = std::get_if<Problems>(&read))
        qFatal("%s", qPrintable(sentence(problems->front())));
    return std::get<Value>(std::move(read));
}

Tables readShipped()
{
    const std::array texts{resource("anthropometry"), resource("tape"),    resource("body"),
                           resource("comfort"),       resource("parts"),   resource("weights"),
                           resource("segments"),      resource("handling")};
    return sound(readTables(
        {texts[0], texts[1], texts[2], texts[3], texts[4], texts[5], texts[6], texts[7]}));
}

} // namespace

const Tables& shippedTables()
{
    static const Tables tables = readShipped();
    return tables;
}

const NumberWords& shippedNumberWords()
{
    static const NumberWords words = sound(readNumberWords(resource("number_words")));
    return words;
}

const HeadingTable& shippedHeadings()
{
    static const HeadingTable table =
        sound(readHeadingTable(resource("headings"), shippedNumberWords()));
    return table;
}

const ClosureTable& shippedClosure()
{
    static const ClosureTable table =
        sound(readClosureTable(resource("closure"), shippedTables().frame));
    return table;
}

} // namespace tripoise
