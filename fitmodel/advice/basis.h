// SPDX-License-Identifier: MIT
#pragma once

#include "advice/prepare.h"
#include "advice/riding.h"
#include "advice/target.h"

namespace tripoise {

/// What a decision rests on. All of it must outlive whatever is made with it.
struct Basis {
    const Person& person;
    const Riding& riding;
    const Prepared& prepared;
    const Tables& tables;
};

} // namespace tripoise
