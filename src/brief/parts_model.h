// SPDX-License-Identifier: MIT
//
// One list of the box: stems, bars, spacers or cranks; each part of the shop and of the fitting,
// ticked where the fitting may use it. One part at a time lies on the bench: a new one, or one of
// the list, which changes as it is typed.
#pragma once

#include <QAbstractListModel> // first: moc cannot begin with <compare>

#include "brief/box_lines.h"
#include "brief/form.h"

#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>

namespace tripoise {

class PartsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by Box")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    Q_PROPERTY(int tickedCount READ tickedCount NOTIFY countChanged)
    Q_PROPERTY(int benchRow READ benchRow NOTIFY benchChanged)
    Q_PROPERTY(bool adding READ adding NOTIFY benchChanged)
    Q_PROPERTY(bool complete READ complete NOTIFY benchChanged)
    Q_PROPERTY(QString partName READ partName NOTIFY benchChanged)
    Q_PROPERTY(QString barKind READ barKind NOTIFY benchChanged)
    Q_PROPERTY(bool reversible READ reversible NOTIFY benchChanged)
    Q_PROPERTY(QList<QObject*> fields READ fields NOTIFY fieldsChanged)
    Q_PROPERTY(QString removedText READ removedText NOTIFY removedChanged)

public:
    enum Role { TextRole = Qt::UserRole, ClampsRole, NoteRole, TickedRole };
    Q_ENUM(Role)

    /// What the box does for its lists.
    struct Bench {
        std::function<const Stock&()> fitting;
        std::function<const Stock&()> shop;
        std::function<const std::vector<Steerer>&()> steerers; ///< of the candidates
        std::function<std::optional<BarKind>()> barKind;       ///< wanted; none: any
        /// Both at once; a fitting that stays the same is no step.
        std::function<void(Stock fitting, Stock shop, const QString& what, const QString& key)> put;
        std::function<void()> seal;
    };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] virtual int tickedCount() const = 0;

    Q_INVOKABLE QString datumOf(tripoise::NumberField* field) const
    {
        return tripoise::datumOf(field);
    }
    Q_INVOKABLE virtual void setTicked(int row, bool ticked) = 0;
    Q_INVOKABLE virtual void setOnly(int row) = 0; ///< it alone; where it is that, all
    Q_INVOKABLE virtual void remove(int row) = 0;  ///< out of the shop's box too
    Q_INVOKABLE virtual void putBack() = 0;        ///< what was removed last
    Q_INVOKABLE virtual void edit(int row) = 0;    ///< takes it on the bench
    Q_INVOKABLE virtual void add() = 0;            ///< a new part on the bench
    Q_INVOKABLE virtual void putIn() = 0;          ///< the new part into the box; the next one
    Q_INVOKABLE virtual void clearBench() = 0;
    Q_INVOKABLE virtual void setPartName(const QString& name) = 0;
    Q_INVOKABLE virtual void setBarKind(const QString& kind) = 0;
    Q_INVOKABLE virtual void setReversible(bool reversible) = 0;

    [[nodiscard]] virtual int benchRow() const = 0; ///< -1 when no row lies on it
    [[nodiscard]] virtual bool adding() const = 0;
    [[nodiscard]] virtual bool complete() const = 0;
    [[nodiscard]] virtual QString partName() const = 0;
    [[nodiscard]] virtual QString barKind() const = 0;
    [[nodiscard]] virtual bool reversible() const = 0;
    [[nodiscard]] virtual QList<QObject*> fields() const = 0;
    [[nodiscard]] virtual QString removedText() const = 0;

    virtual void follow() = 0;     ///< fitting, shop or candidates changed
    virtual void speakAgain() = 0; ///< language or units changed

signals:
    void countChanged();
    void benchChanged();
    void fieldsChanged();
    void removedChanged();
};

/// One for each of Stems, Bars, Spacers and Cranks.
template <typename List>
[[nodiscard]] std::unique_ptr<PartsModel> makeParts(PartsModel::Bench bench);

} // namespace tripoise
