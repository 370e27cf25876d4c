// SPDX-License-Identifier: MIT
//
// The shop's box of parts: four lists. The fitting uses what is ticked; the shop keeps the box from
// one fitting to the next.
#pragma once

#include "brief/parts_model.h"
#include "session/documents.h"
#include "session/session_holder.h"

#include <QPointer>

namespace tripoise {

class Box : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(
        tripoise::Documents* documents READ documents WRITE setDocuments NOTIFY documentsChanged)
    Q_PROPERTY(tripoise::PartsModel* stems READ stems CONSTANT)
    Q_PROPERTY(tripoise::PartsModel* bars READ bars CONSTANT)
    Q_PROPERTY(tripoise::PartsModel* spacers READ spacers CONSTANT)
    Q_PROPERTY(tripoise::PartsModel* cranks READ cranks CONSTANT)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)

public:
    explicit Box(QObject* parent = nullptr);

    [[nodiscard]] Documents* documents() const { return m_documents; }
    void setDocuments(Documents* documents); ///< which keep the shop's box

    /// The shop's box without documents.
    [[nodiscard]] const Stock& shop() const { return m_shop; }
    void setShop(const Stock& shop);

    [[nodiscard]] PartsModel* stems() const { return m_lists[0].get(); }
    [[nodiscard]] PartsModel* bars() const { return m_lists[1].get(); }
    [[nodiscard]] PartsModel* spacers() const { return m_lists[2].get(); }
    [[nodiscard]] PartsModel* cranks() const { return m_lists[3].get(); }
    [[nodiscard]] QString summary() const;

signals:
    void sessionChanged();
    void documentsChanged();
    void changed();

private:
    void sessionSet() override;
    [[nodiscard]] const Stock& stock() const { return fitting().stock; }
    void put(Stock fitting, Stock shop, const QString& what, const QString& key);
    void follow();
    [[nodiscard]] std::vector<Steerer> steerers() const; ///< of the frames

    QPointer<Documents> m_documents;
    Stock m_shop;
    Stock m_followed;
    std::vector<Steerer> m_steerers;
    std::optional<BarKind> m_barKind;
    std::array<std::unique_ptr<PartsModel>, 4> m_lists;
};

} // namespace tripoise
