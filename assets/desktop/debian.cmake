# SPDX-License-Identifier: MIT
# Run by cpack before it packs: what a package of Debian has beyond what is installed elsewhere.
set(share ${CPACK_TEMPORARY_DIRECTORY}/usr/share)
set(here ${CMAKE_CURRENT_LIST_DIR})
set(readable OWNER_READ OWNER_WRITE GROUP_READ WORLD_READ)
file(COPY ${here}/copyright ${here}/changelog DESTINATION ${share}/doc/tripoise FILE_PERMISSIONS ${readable})
file(COPY ${here}/org.tripoise.Tripoise-content.xml DESTINATION ${share}/mime/packages
    FILE_PERMISSIONS ${readable})
execute_process(COMMAND gzip -9nf ${share}/doc/tripoise/changelog ${share}/man/man1/tripoise.1
    COMMAND_ERROR_IS_FATAL ANY)
