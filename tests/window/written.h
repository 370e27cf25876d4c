// SPDX-License-Identifier: MIT
//
// What stands written in a window, and whether it stands there whole.
#pragma once

#include "catalogue.h"

#include <QAccessible>
#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>
#include <utility>

namespace tripoise::test {

template <typename See> void forEveryVisible(QQuickItem* item, const See& see)
{
    if (!item->isVisible())
        return;
    see(item);
    const auto children = item->childItems();
    for (QQuickItem* child : children)
        forEveryVisible(child, see);
}

/// Every section and everything in it, as if each had been clicked open.
inline void unfold(QQuickWindow* window)
{
    QList<QQuickItem*> folded;
    do {
        folded.clear();
        forEveryVisible(window->contentItem(), [&folded](QQuickItem* item) {
            if (item->property("open") == QVariant(false))
                folded << item;
        });
        for (QQuickItem* item : std::as_const(folded))
            item->setProperty("open", true);
    } while (!folded.isEmpty());
}

/// What is read: written, told beside the pointer, or told to who does not see it.
inline QStringList everythingWritten(QQuickWindow* window)
{
    QStringList texts;
    forEveryVisible(window->contentItem(), [&texts](QQuickItem* item) {
        for (const char* property : {"text", "hint", "placeholderText"})
            texts << item->property(property).toString();
        if (QAccessibleInterface* told = QAccessible::queryAccessibleInterface(item))
            texts << told->text(QAccessible::Name) << told->text(QAccessible::Description);
    });
    texts.removeAll(QString());
    texts.removeDuplicates();
    return texts;
}

/// Finds what one language says and the other says otherwise.
class Foreign {
public:
    /// The language of the sources is the foreign one, or that of the translations.
    Foreign(const std::vector<Message>& messages, bool sources)
    {
        static const QRegularExpression place(QStringLiteral("%(?:L?\\d|n)"));
        static const QRegularExpression word(QStringLiteral("[a-zäöüß]{3}"));
        QSet<QString> own;
        const auto patternOf = [](const QStringList& parts) {
            QStringList escaped;
            for (const QString& part : parts)
                escaped << QRegularExpression::escape(part);
            return QRegularExpression(
                QRegularExpression::anchoredPattern(escaped.join(QStringLiteral(".+"))));
        };
        const auto hasWord = [](const QStringList& parts) {
            return word.match(parts.join(QLatin1Char(' '))).hasMatch();
        };
        for (const Message& message : messages) {
            const QString text = sources ? message.said.value(0) : message.source;
            const QStringList parts = text.split(place);
            own << text;
            if (parts.size() > 1 && hasWord(parts))
                m_own << patternOf(parts);
        }
        for (const Message& message : messages) {
            const QString text = sources ? message.source : message.said.value(0);
            const QStringList parts = text.split(place);
            if (own.contains(text) || !hasWord(parts))
                continue;
            if (parts.size() > 1)
                m_patterns << patternOf(parts);
            else if (text.size() >= leastPhrase && text.contains(QLatin1Char(' ')))
                m_phrases << text;
            else
                m_words << text;
        }
    }

    [[nodiscard]] QStringList among(const QStringList& texts) const
    {
        QStringList found;
        for (QString text : texts) {
            text.replace(QChar(QChar::Nbsp), QLatin1Char(' ')).remove(QStringLiteral("✓"));
            if (isForeign(text.trimmed()))
                found << text;
        }
        return found;
    }

private:
    static constexpr int leastPhrase = 10;

    static bool fitsAny(const QString& text, const QList<QRegularExpression>& patterns)
    {
        return std::any_of(patterns.begin(), patterns.end(),
                           [&text](const auto& pattern) { return pattern.match(text).hasMatch(); });
    }
    [[nodiscard]] bool isForeign(const QString& text) const
    {
        return m_words.contains(text)
               || std::any_of(m_phrases.begin(), m_phrases.end(),
                              [&text](const QString& phrase) { return text.contains(phrase); })
               || (fitsAny(text, m_patterns) && !fitsAny(text, m_own));
    }

    QSet<QString> m_words;
    QStringList m_phrases; ///< that also stand inside of others
    QList<QRegularExpression> m_patterns;
    QList<QRegularExpression> m_own; ///< "Stack 574 mm" is both
};

/// Texts that do not stand whole: larger than their place, or beyond what clips them. A single sign
/// and the name of the fitting may be.
inline QStringList cutOff(QQuickItem* under)
{
    QStringList cut;
    forEveryVisible(under, [&cut](QQuickItem* item) {
        const QString text = item->property("text").toString();
        if (!item->inherits("QQuickText") || text.size() < 2
            || item->objectName() == QLatin1String("fittingTitle"))
            return;
        const bool elided = item->property("truncated").toBool();
        const double wide = item->property("contentWidth").toDouble();
        const double high = item->property("contentHeight").toDouble();
        if (elided || wide > item->width() + 1.0 || high > item->height() + 1.0) {
            cut << QStringLiteral("%1 (%2 x %3 in %4 x %5)")
                       .arg(text)
                       .arg(wide)
                       .arg(high)
                       .arg(item->width())
                       .arg(item->height());
            return;
        }
        const QRectF at = item->mapRectToScene({0.0, 0.0, wide, high});
        for (QQuickItem* around = item->parentItem(); around; around = around->parentItem()) {
            const bool clips = around->clip() || !around->parentItem();
            const QRectF room =
                around->mapRectToScene({0.0, 0.0, around->width(), around->height()});
            if (clips && (at.left() < room.left() - 1.0 || at.right() > room.right() + 1.0)) {
                cut << QStringLiteral("%1 (%2 to %3, in %4 to %5)")
                           .arg(text)
                           .arg(at.left())
                           .arg(at.right())
                           .arg(room.left())
                           .arg(room.right());
                return;
            }
        }
    });
    return cut;
}
inline QStringList cutOff(QQuickWindow* window)
{
    return cutOff(window->contentItem());
}

} // namespace tripoise::test
