// SPDX-License-Identifier: MIT
//
// One number that can be typed: what stands in it, what it takes, and what is odd about it.
//
// While it is typed a plausible number counts at once; anything else is passed over in silence, and
// what counted before the typing began counts again. When the keys leave it, what is no number or
// not plausible stays as it was typed, with a word beside it. Where two readings may stand, the
// second is behind a semicolon: "842; 846".
#pragma once

#include "entry/field_spec.h"
#include "entry/read_number.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace tripoise {

class NumberField : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a model")
    Q_PROPERTY(QString label READ label NOTIFY spoken)
    Q_PROPERTY(QString text READ text NOTIFY changed)
    Q_PROPERTY(QString placeholder READ placeholder NOTIFY stoodIn)
    Q_PROPERTY(QString unitLabel READ unitLabel NOTIFY spoken)
    Q_PROPERTY(bool inFeet READ inFeet NOTIFY spoken)
    Q_PROPERTY(QString rangeText READ rangeText NOTIFY spoken)
    Q_PROPERTY(QString message READ message NOTIFY remarked)
    Q_PROPERTY(QString level READ level NOTIFY remarked)
    Q_PROPERTY(bool hasValue READ hasValue NOTIFY changed)

public:
    explicit NumberField(FieldSpec spec, QObject* parent = nullptr);

    [[nodiscard]] const QString& label() const { return m_spec.label; }
    [[nodiscard]] const QString& text() const { return m_text; }
    [[nodiscard]] const QString& placeholder() const { return m_placeholder; }
    [[nodiscard]] QString unitLabel() const;
    [[nodiscard]] bool inFeet() const;       ///< shown as feet and inches
    [[nodiscard]] QString rangeText() const; ///< what is plausible
    [[nodiscard]] QString message() const { return m_message.isEmpty() ? m_remark : m_message; }
    [[nodiscard]] QString level() const; ///< "fine", "note", "odd" or "wrong"
    [[nodiscard]] bool hasValue() const { return m_read.first.has_value(); }
    [[nodiscard]] std::optional<double> value() const { return m_read.first; }
    [[nodiscard]] std::optional<double> second() const { return m_read.second; }

    Q_INVOKABLE void type(const QString& text);
    Q_INVOKABLE void commit(const QString& text);
    Q_INVOKABLE void revert();
    /// Puts back what counts, where something else stands in the field; whether it did.
    Q_INVOKABLE bool takeBack();
    Q_INVOKABLE void step(int steps);

    /// From outside. The text being typed stays as long as the value is the same.
    void setValue(std::optional<double> value, std::optional<double> second = {});
    /// What stands in for the value while there is none, and how it looks.
    void setStandIn(std::optional<double> value, const QString& saidSo = {});
    /// What someone else finds odd about the value.
    void setRemark(const QString& remark, bool odd);
    void setLabel(const QString& label);
    /// What was typed and said: the value belongs to something else now.
    Q_INVOKABLE void forget();
    void speakAnew(); ///< language or units changed

signals:
    void changed();  ///< what stands in it
    void remarked(); ///< what is odd about it
    void stoodIn();
    void spoken();               ///< its name and unit
    void accepted(double value); ///< also for another second reading
    void cleared();
    void finished(); ///< the keys left it

private:
    struct Readings {
        std::optional<double> first;
        std::optional<double> second;
    };
    struct Typed {
        NumberRead first;
        NumberRead second;
        [[nodiscard]] bool empty() const { return first.oddity == Oddity::Empty; }
        [[nodiscard]] bool sound() const; ///< every reading there is
    };

    [[nodiscard]] static bool same(const Readings& one, const Readings& other);
    [[nodiscard]] Question question() const;
    [[nodiscard]] QString said(double value) const;
    [[nodiscard]] QString said(const Readings& readings) const; ///< empty without one
    [[nodiscard]] Typed read(QStringView text) const;
    /// What counts of what is typed, and of what counted before where that does not.
    [[nodiscard]] Readings counted(const Typed& typed) const;
    void put(const Readings& readings);
    void tell(); ///< what stands in it, and what is odd about that
    void complain(const Typed& typed, const QString& text);

    FieldSpec m_spec;
    Readings m_read;
    Readings m_before; ///< what counted before the typing began
    std::optional<double> m_standIn;
    QString m_standInWords;
    QString m_text;
    QString m_placeholder;
    QString m_message;
    QString m_level;
    QString m_remark;
    bool m_remarkIsOdd = false;
    bool m_typing = false;
};

} // namespace tripoise
