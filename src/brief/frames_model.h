// SPDX-License-Identifier: MIT
//
// The candidate sizes: those of the fitting, in its order, then those that are being typed and not
// whole yet. As soon as a size is whole it becomes a candidate, so that the candidates can always
// be decided.
#pragma once

#include "brief/frame_fields.h"
#include "session/session_holder.h"

#include <QAbstractListModel>

namespace tripoise {

class FramesModel : public QAbstractListModel, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QString summary READ summary NOTIFY summaryChanged)
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    enum Role { FieldsRole = Qt::UserRole, TitleRole, FiguresRole };
    Q_ENUM(Role)

    explicit FramesModel(QObject* parent = nullptr) : QAbstractListModel(parent) {}

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return int(m_rows.size()); }
    [[nodiscard]] QString summary() const;
    [[nodiscard]] Q_INVOKABLE tripoise::FrameFields* fieldsAt(int row) const;

    /// A new size of the last one's model, to be typed; its row, or -1 where there are too many.
    Q_INVOKABLE int add();
    /// The same again, but for its name; its row, or -1 where there are too many.
    Q_INVOKABLE int duplicate(int row);
    Q_INVOKABLE void remove(int row);

signals:
    void sessionChanged();
    void summaryChanged();
    void countChanged();

private:
    void sessionSet() override;
    int begin(const FrameSize& frame);
    void follow();
    void insert(std::size_t row, const FrameSize& frame, bool entered);
    void drop(std::size_t row);
    void edited(FrameFields& fields, const FrameSize& next, const QString& what,
                const QString& key);
    void editedDraft(FrameFields& fields, const FrameSize& next, const QString& what,
                     const QString& key);
    void editedEntered(FrameFields& fields, const FrameSize& next, const QString& what,
                       const QString& key);
    void comment() const; ///< what each size is told
    [[nodiscard]] std::size_t rowOf(const FrameFields& fields) const;
    [[nodiscard]] QString keyOf(std::size_t row, const QString& key) const;

    std::vector<FrameFields*> m_rows; // children of this
};

} // namespace tripoise
