// SPDX-License-Identifier: MIT
#include "session/row_list.h"

#include <QMetaProperty>

namespace tripoise {
namespace {

constexpr int firstRole = Qt::UserRole + 1;

}

QHash<int, QByteArray> RowList::rolesOf(const QMetaObject& row)
{
    QHash<int, QByteArray> roles;
    for (int i = 0; i < row.propertyCount(); ++i)
        roles.insert(firstRole + i, row.property(i).name());
    return roles;
}

QVariant RowList::said(const QMetaObject& gadget, const void* row, int role)
{
    const int property = role == Qt::DisplayRole ? 0 : role - firstRole;
    return property >= 0 && property < gadget.propertyCount()
               ? gadget.property(property).readOnGadget(row)
               : QVariant();
}

RowList::Said RowList::saidOf(int row) const
{
    Said said;
    const QHash<int, QByteArray> roles = roleNames();
    for (auto role = roles.keyBegin(); role != roles.keyEnd(); ++role)
        said[*role] = data(index(row), *role);
    return said;
}

QList<int> RowList::otherwise(const Said& before, const Said& now)
{
    QList<int> roles;
    for (auto said = now.begin(); said != now.end(); ++said)
        if (before.value(said.key()) != said.value())
            roles << said.key();
    return roles;
}

} // namespace tripoise
