// SPDX-License-Identifier: MIT
//
// One size being looked at and typed: a candidate of the fitting, or one that is not whole yet.
#pragma once

#include "brief/form.h"
#include "brief/frame_entries.h"
#include "setup/bicycle.h"

#include <QtQml/qqmlregistration.h>

#include <functional>

namespace tripoise {

class FrameFields : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by FramesModel")
    Q_PROPERTY(QString model READ model NOTIFY changed)
    Q_PROPERTY(QString size READ size NOTIFY changed)
    Q_PROPERTY(QString sizeMessage READ sizeMessage NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString figures READ figures NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(bool entered READ entered NOTIFY changed)
    Q_PROPERTY(QString material READ material NOTIFY changed)
    Q_PROPERTY(QList<QObject*> first READ first CONSTANT)
    Q_PROPERTY(QList<QObject*> rest READ rest CONSTANT)
    Q_PROPERTY(QList<QObject*> wheel READ wheel CONSTANT)
    Q_PROPERTY(QList<QObject*> headset READ headset CONSTANT)
    Q_PROPERTY(QList<QObject*> post READ post CONSTANT)
    Q_PROPERTY(QList<QObject*> sold READ sold CONSTANT)
    Q_PROPERTY(QList<QObject*> weights READ weights CONSTANT)

public:
    /// Asked with the size as it would be, what changed, and which of its entries.
    using Edited = std::function<void(FrameFields&, const FrameSize& next, const QString& what,
                                      const QString& key)>;
    FrameFields(FrameSize frame, bool entered, Edited edited, std::function<void()> left,
                QObject* parent);

    [[nodiscard]] const FrameSize& frame() const { return m_frame; }
    void show(const FrameSize& frame);
    void mount(const Bicycle& bicycle);                      ///< whose wheels the size is on
    [[nodiscard]] bool entered() const { return m_entered; } ///< among the candidates
    void setEntered(bool entered);
    /// A message beside the size's name, and another below the fields.
    void say(const QString& sizeMessage, const QString& note);
    void speakAgain();

    [[nodiscard]] QString model() const { return QString::fromStdString(m_frame.model); }
    [[nodiscard]] QString size() const { return QString::fromStdString(m_frame.size); }
    [[nodiscard]] const QString& sizeMessage() const { return m_sizeMessage; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString figures() const;
    [[nodiscard]] const QString& note() const { return m_note; }
    [[nodiscard]] QString material() const; ///< as documents call it; empty where not stated

    Q_INVOKABLE QString datumOf(tripoise::NumberField* field) const
    {
        return tripoise::datumOf(field);
    }
    Q_INVOKABLE void setModel(const QString& text);
    Q_INVOKABLE void setSize(const QString& text);
    Q_INVOKABLE void setMaterial(const QString& word); ///< the same again takes it away

    [[nodiscard]] QList<QObject*> first() const { return form(FrameGroup::First).fields(); }
    [[nodiscard]] QList<QObject*> rest() const { return form(FrameGroup::Rest).fields(); }
    [[nodiscard]] QList<QObject*> wheel() const { return form(FrameGroup::Wheel).fields(); }
    [[nodiscard]] QList<QObject*> headset() const { return form(FrameGroup::Headset).fields(); }
    [[nodiscard]] QList<QObject*> post() const { return form(FrameGroup::Post).fields(); }
    [[nodiscard]] QList<QObject*> sold() const { return form(FrameGroup::Sold).fields(); }
    [[nodiscard]] QList<QObject*> weights() const { return form(FrameGroup::Weights).fields(); }

signals:
    void changed();

private:
    [[nodiscard]] const FormOf<FrameSize>& form(FrameGroup group) const
    {
        return m_forms[static_cast<std::size_t>(group)];
    }
    void showForms() const;

    FrameSize m_frame;
    Bicycle m_bicycle;
    bool m_entered;
    QString m_sizeMessage;
    QString m_note;
    Edited m_edited;
    std::vector<FormOf<FrameSize>> m_forms;
};

} // namespace tripoise
