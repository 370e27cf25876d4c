// SPDX-License-Identifier: MIT
#include "entry/number_field.h"

#include "command/tables.h"
#include "wording/field_words.h"

#include <cmath>
#include <utility>

namespace tripoise {

NumberField::NumberField(FieldSpec spec, QObject* parent) : QObject(parent), m_spec(std::move(spec))
{
}

Question NumberField::question() const
{
    return {m_spec.kind, shownUnit(m_spec), m_spec.plausible, decimalSign()};
}

QString NumberField::said(double value) const
{
    return fieldText(value, m_spec);
}

QString NumberField::saidValue() const
{
    return m_value ? said(*m_value) : QString();
}

QString NumberField::unitLabel() const
{
    return unitName(shownUnit(m_spec));
}

bool NumberField::inFeet() const
{
    return m_spec.stature && shownUnit(m_spec) == Unit::Inch;
}

QString NumberField::rangeText() const
{
    return plausibleRange(m_spec);
}

QString NumberField::level() const
{
    if (!m_message.isEmpty())
        return m_level;
    if (!m_remark.isEmpty())
        return m_remarkIsOdd ? QStringLiteral("odd") : QStringLiteral("note");
    return QStringLiteral("fine");
}

void NumberField::put(std::optional<double> value)
{
    if (value.has_value() == m_value.has_value() && (!value || std::abs(*m_value - *value) < 1e-9))
        return;
    m_value = value;
    if (value)
        emit accepted(*value);
    else
        emit cleared();
}

void NumberField::tell()
{
    emit changed();
    emit remarked();
}

void NumberField::type(const QString& text)
{
    if (!m_typing)
        m_before = m_value;
    m_typing = true;
    m_text = text;
    m_message.clear();
    const NumberRead read = readNumber(text, question(), shippedNumberWords());
    put(read.sound() ? std::optional(read.value) : m_before);
    tell();
}

void NumberField::commit(const QString& text)
{
    if (!m_typing)
        m_before = m_value;
    m_message.clear();
    const NumberRead read = readNumber(text, question(), shippedNumberWords());
    const bool emptied = read.oddity == Oddity::Empty;
    if (emptied && (!m_spec.needed || !m_before)) {
        m_text.clear();
        put(std::nullopt);
    } else if (read.sound()) {
        if (m_value && text == said(*m_value)) { // as shown, which may be rounded
            m_text = text;
        } else {
            put(read.value);
            m_text = saidValue();
        }
        if (read.unitGuessed) {
            m_message = guessedUnit(read);
            m_level = QStringLiteral("note");
        }
    } else {
        put(m_before);
        complain(read, text);
    }
    m_typing = false;
    emit finished();
    tell();
}

void NumberField::complain(const NumberRead& read, const QString& typed)
{
    m_text = typed;
    m_message = complaint(read, m_spec);
    m_level = QStringLiteral("wrong");
}

void NumberField::revert()
{
    if (m_typing)
        put(m_before);
    forget();
}

void NumberField::forget()
{
    m_before = m_value;
    m_typing = false;
    m_message.clear();
    m_text = saidValue();
    tell();
}

bool NumberField::takeBack()
{
    const NumberRead read = readNumber(m_text, question(), shippedNumberWords());
    const bool stands = read.oddity == Oddity::Empty ? !m_value : read.sound();
    if (!stands)
        revert();
    return !stands;
}

void NumberField::step(int steps)
{
    const auto from = m_value ? m_value : m_standIn;
    if (!from)
        return;
    const double size = m_spec.step * factsOf(shownUnit(m_spec)).size;
    const double to = std::round(*from / size + steps) * size;
    if (to < m_spec.plausible.low || to > m_spec.plausible.high)
        return;
    m_typing = false;
    m_message.clear();
    put(to);
    m_text = saidValue();
    tell();
}

void NumberField::setValue(std::optional<double> value)
{
    const bool same =
        value.has_value() == m_value.has_value() && (!value || std::abs(*value - *m_value) < 1e-9);
    if (same)
        return;
    m_value = value;
    m_before = value;
    m_typing = false;
    m_message.clear();
    m_text = saidValue();
    tell();
}

void NumberField::setStandIn(std::optional<double> value, const QString& saidSo)
{
    const QString words =
        saidSo.isEmpty() && value ? QStringLiteral("≈ %1").arg(said(*value)) : saidSo;
    m_standIn = value;
    m_standInWords = saidSo;
    if (std::exchange(m_placeholder, words) != words)
        emit stoodIn();
}

void NumberField::setRemark(const QString& remark, bool odd)
{
    if (m_remark == remark && m_remarkIsOdd == odd)
        return;
    m_remark = remark;
    m_remarkIsOdd = odd;
    emit remarked();
}

void NumberField::setLabel(const QString& label)
{
    if (m_spec.label == label)
        return;
    m_spec.label = label;
    emit spoken();
}

void NumberField::speakAnew()
{
    if (m_level == QLatin1String("wrong") && !m_message.isEmpty()) { // the complaint stays, anew
        const NumberRead read = readNumber(m_text, question(), shippedNumberWords());
        if (!read.sound())
            m_message = complaint(read, m_spec);
    } else if (!m_typing) {
        m_message.clear();
        m_text = saidValue();
    }
    if (m_standIn && m_standInWords.isEmpty())
        m_placeholder = QStringLiteral("≈ %1").arg(said(*m_standIn));
    tell();
    emit stoodIn();
    emit spoken();
}

} // namespace tripoise
