// SPDX-License-Identifier: MIT
#include "entry/number_field.h"

#include "entry/field_words.h"
#include "shipped/tables.h"

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

bool NumberField::Typed::sound() const
{
    return first.sound() && (second.sound() || second.oddity == Oddity::Empty);
}

bool NumberField::same(const Readings& one, const Readings& other)
{
    const auto alike = [](const std::optional<double>& a, const std::optional<double>& b) {
        return a.has_value() == b.has_value() && (!a || std::abs(*a - *b) < 1e-9);
    };
    return alike(one.first, other.first) && alike(one.second, other.second);
}

QString NumberField::said(double value) const
{
    return fieldText(value, m_spec);
}

QString NumberField::said(const Readings& readings) const
{
    if (!readings.first)
        return {};
    return readings.second ? said(*readings.first) + QStringLiteral("; ") + said(*readings.second)
                           : said(*readings.first);
}

NumberField::Typed NumberField::read(QStringView text) const
{
    const qsizetype end = m_spec.twice ? text.indexOf(u';') : -1;
    const auto one = [this](QStringView reading) {
        return readNumber(reading, question(), shippedNumberWords());
    };
    if (end < 0)
        return {one(text), {}};
    const Typed typed{one(text.first(end)), one(text.sliced(end + 1))};
    return typed.empty() ? Typed{typed.second, {}} : typed;
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

NumberField::Readings NumberField::counted(const Typed& typed) const
{
    if (!typed.first.sound())
        return m_before;
    if (typed.second.oddity == Oddity::Empty)
        return {typed.first.value, {}};
    return {typed.first.value,
            typed.second.sound() ? std::optional(typed.second.value) : m_before.second};
}

void NumberField::put(const Readings& readings)
{
    if (same(readings, m_read))
        return;
    m_read = readings;
    if (readings.first)
        emit accepted(*readings.first);
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
        m_before = m_read;
    m_typing = true;
    m_text = text;
    m_message.clear();
    const Typed typed = read(text);
    put(counted(typed));
    tell();
}

void NumberField::commit(const QString& text)
{
    if (!m_typing)
        m_before = m_read;
    m_message.clear();
    const Typed typed = read(text);
    if (typed.empty() && (!m_spec.needed || !m_before.first)) {
        m_text.clear();
        put({});
    } else if (typed.sound()) {
        if (m_read.first && text == said(m_read)) { // as shown, which may be rounded
            m_text = text;
        } else {
            put(counted(typed));
            m_text = said(m_read);
        }
        if (typed.first.unitGuessed) {
            m_message = guessedUnit(typed.first);
            m_level = QStringLiteral("note");
        }
    } else {
        put(counted(typed));
        complain(typed, text);
    }
    m_typing = false;
    emit finished();
    tell();
}

void NumberField::complain(const Typed& typed, const QString& text)
{
    m_text = text;
    m_message = complaint(typed.first.sound() ? typed.second : typed.first, m_spec);
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
    m_before = m_read;
    m_typing = false;
    m_message.clear();
    m_text = said(m_read);
    tell();
}

bool NumberField::takeBack()
{
    const Typed typed = read(m_text);
    const bool stands = typed.empty() ? !m_read.first : typed.sound();
    if (!stands)
        revert();
    return !stands;
}

void NumberField::step(int steps)
{
    const auto from = m_read.first ? m_read.first : m_standIn;
    if (!from)
        return;
    const double size = m_spec.step * factsOf(shownUnit(m_spec)).size;
    const double to = std::round(*from / size + steps) * size;
    if (to < m_spec.plausible.low || to > m_spec.plausible.high)
        return;
    m_typing = false;
    m_message.clear();
    put({to, m_read.second});
    m_text = said(m_read);
    tell();
}

void NumberField::setValue(std::optional<double> value, std::optional<double> second)
{
    const Readings readings{value, second};
    if (same(readings, m_read))
        return;
    m_read = readings;
    m_before = readings;
    m_typing = false;
    m_message.clear();
    m_text = said(m_read);
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
        if (const Typed typed = read(m_text); !typed.sound())
            complain(typed, m_text);
    } else if (!m_typing) {
        m_message.clear();
        m_text = said(m_read);
    }
    if (m_standIn && m_standInWords.isEmpty())
        m_placeholder = QStringLiteral("≈ %1").arg(said(*m_standIn));
    tell();
    emit stoodIn();
    emit spoken();
}

} // namespace tripoise
