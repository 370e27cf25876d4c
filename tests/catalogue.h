// SPDX-License-Identifier: MIT
//
// What a file of translations holds, message by message.
#pragma once

#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QStringList>
#include <QXmlStreamReader>

#include <vector>

namespace tripoise::test {

struct Message {
    QString context;
    QString source;
    QString comment;
    QStringList said; ///< one, or every plural form
    bool plural = false;
    bool finished = true;

    [[nodiscard]] QString key() const
    {
        return context + QLatin1Char('\n') + source + QLatin1Char('\n') + comment;
    }
};

/// Empty where the file cannot be read to its end.
inline std::vector<Message> catalogue(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    std::vector<Message> messages;
    QString context;
    QXmlStreamReader xml(&file);
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        const auto name = xml.name();
        if (name == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (name == QLatin1String("message")) {
            messages.push_back({context, {}, {}, {}, false, true});
            messages.back().plural = xml.attributes().hasAttribute(QLatin1String("numerus"));
        } else if (name == QLatin1String("source")) {
            messages.back().source = xml.readElementText();
        } else if (name == QLatin1String("comment")) {
            messages.back().comment = xml.readElementText();
        } else if (name == QLatin1String("numerusform")) {
            messages.back().said << xml.readElementText();
        } else if (name == QLatin1String("translation")) {
            messages.back().finished = !xml.attributes().hasAttribute(QLatin1String("type"));
            if (!messages.back().plural)
                messages.back().said << xml.readElementText();
        }
    }
    return xml.hasError() ? std::vector<Message>() : messages;
}

/// The places of a sentence that something is put into.
inline QSet<QString> placesOf(const QString& text)
{
    static const QRegularExpression place(QStringLiteral("%(?:L?\\d|n)"));
    QSet<QString> places;
    for (auto found = place.globalMatch(text); found.hasNext();)
        places << found.next().captured();
    return places;
}

} // namespace tripoise::test
